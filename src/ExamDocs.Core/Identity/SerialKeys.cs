using System.Text.RegularExpressions;

namespace ExamDocs.Core.Identity;

/// <summary>
/// The keys of serial numbers: those of <see cref="Folded"/>, also without the words for "serial number" that somebody typed before the
/// number ("SN 4711").
/// </summary>
public static partial class SerialKeys
{
    private static readonly FoldedLately<IReadOnlyList<string>> Lately = new(KeysOf);

    /// <summary>The keys to look a serial number up by; empty for a text without a letter or digit.</summary>
    public static IReadOnlyList<string> Of(string? typed) => string.IsNullOrWhiteSpace(typed) ? [] : Lately.Of(typed);

    /// <summary>True where both are given and are the same number.</summary>
    public static bool Same(string? one, string? other)
    {
        var keys = Of(one);
        return Of(other).Any(keys.Contains);
    }

    /// <summary>True where both are given and are not the same number.</summary>
    public static bool Differ(string? one, string? other) => Of(one).Count > 0 && Of(other).Count > 0 && !Same(one, other);

    private static IReadOnlyList<string> KeysOf(string typed)
    {
        var number = typed.Trim();
        var label = Label().Match(number);
        // "No. 12" and "Nr. 12" may be two makers' ways to begin a number.
        return label.Success && label.Value[0] is 'S' or 's'
            ? [.. Folded.Keys(typed).Concat(Folded.Keys(number[label.Length..])).Distinct(StringComparer.Ordinal)]
            : Folded.Keys(typed);
    }

    /// <summary>Words for "serial number" before a number.</summary>
    [GeneratedRegex(
        @"\A(S ?[/.]? ?N|SER(IAL)?( ?(NO|NR|NUMBER))?|NO|NR|NUMBER)[-.:/# ]*(?=[A-Z0-9])",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    internal static partial Regex Label();
}
