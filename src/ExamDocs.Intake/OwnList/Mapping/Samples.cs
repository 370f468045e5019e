using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>A few values to show what a column or a word is about.</summary>
internal static class Samples
{
    private const int Most = 3;

    private const int Longest = 40;

    public static IReadOnlyList<string> Of(IEnumerable<string> values) =>
        [.. values.Where(v => v.Length > 0).Distinct(StringComparer.Ordinal).Take(Most).Select(Short)];

    public static string Short(string text)
    {
        var line = Visible(text);
        return line.Length <= Longest ? line : line[..(char.IsHighSurrogate(line[Longest - 1]) ? Longest - 1 : Longest)] + "…";
    }

    /// <summary>On one line with single blanks, without characters that cannot be seen.</summary>
    public static string Visible(string text)
    {
        var visible = string.Concat(text.EnumerateRunes().Select(r => r.ToString()).Where(r => TextGuard.Objection(r) is null));
        return string.Join(' ', visible.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
