using System.Globalization;
using System.Text;

namespace ExamDocs.UseCases.Outputs;

/// <summary>
/// Makes of any text a part of a file name that Windows, macOS and Linux take alike and show as it is. What could mislead or be refused
/// goes; letters of every language stay.
/// </summary>
internal static class SafeFileName
{
    /// <summary>Most characters (UTF-16) of a whole name: well within what Windows takes of a path.</summary>
    public const int MostCharacters = 120;

    /// <summary>Most bytes (UTF-8) of a whole name: Linux takes 255, an encrypted folder fewer.</summary>
    public const int MostBytes = 140;

    /// <summary>What Windows refuses, and letters that look like a separator, a colon or a dot.</summary>
    private const string Refused =
        "<>:\"/\\|?*\u2044\u2215\u2216\u29F5\u29F8\u29F9\uFE55\uFE68\uFF0F\uFF1A\uFF3C\uA789\u2236\u2024\uFE52\uFF0E\u3002\uFF61";

    private static readonly char[] NotFirst = [' ', '.', '-', '~'];

    private static readonly char[] NotLast = [' ', '.'];

    /// <summary>Names of devices on Windows, with whatever ending.</summary>
    private static readonly HashSet<string> Devices = new(
        [
            "CON",
            "PRN",
            "AUX",
            "NUL",
            "CLOCK$",
            "CONIN$",
            "CONOUT$",
            .. "0123456789\u00B9\u00B2\u00B3".SelectMany(n => new[] { $"COM{n}", $"LPT{n}" }),
        ],
        StringComparer.OrdinalIgnoreCase
    );

    /// <summary>A text as a part of a name: on one line, without unseen marks, with hyphens for what a system refuses.</summary>
    public static string Part(string? text)
    {
        var kept = new StringBuilder();
        // A half of a pair of characters is no text; it is read as the sign for that, and taken out.
        foreach (var rune in (text ?? "").EnumerateRunes())
            kept.Append(Kept(rune));
        return Tidy(kept.ToString().Normalize());
    }

    /// <summary>Whether a text can stand in a name as it is.</summary>
    public static bool IsPart(string text) =>
        text.EnumerateRunes().All(r => string.Equals(Kept(r), r.ToString(), StringComparison.Ordinal));

    /// <summary>A name without its ending: nothing first or last that a system hides or cuts, and no device's name.</summary>
    public static string Whole(string name)
    {
        var tidy = Tidy(name).TrimStart(NotFirst).TrimEnd(NotLast);
        return Devices.Contains(tidy.Split('.')[0].Trim()) ? $"_{tidy}" : tidy;
    }

    /// <summary>Whether a whole name with its ending is short enough everywhere.</summary>
    public static bool Fits(string name) => name.Length <= MostCharacters && Encoding.UTF8.GetByteCount(name) <= MostBytes;

    /// <summary>A safe name of at most so many characters and bytes, cut between letters.</summary>
    public static string Cut(string name, int mostCharacters, int mostBytes)
    {
        var kept = Whole(name);
        while (kept.Length > mostCharacters || Encoding.UTF8.GetByteCount(kept) > mostBytes)
            kept = Whole(WithoutLast(kept));
        return kept;
    }

    /// <summary>A text without its last letter, which may be several characters.</summary>
    public static string WithoutLast(string text) => text[..StringInfo.ParseCombiningCharacters(text)[^1]].TrimEnd();

    private static string Tidy(string text) => string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries)).TrimEnd(NotLast);

    private static string Kept(Rune rune) =>
        rune == Rune.ReplacementChar ? ""
        : Refused.Contains(rune.ToString(), StringComparison.Ordinal) ? "-"
        : Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.Control
            or UnicodeCategory.SpaceSeparator
            or UnicodeCategory.LineSeparator
            or UnicodeCategory.ParagraphSeparator => " ",
            UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned => "",
            _ => rune.ToString(),
        };
}
