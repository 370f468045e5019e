using System.Globalization;
using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Text as a user typed it, from text as the format stores it.</summary>
internal static partial class CellText
{
    /// <summary>Undoes the format's _xHHHH_ escapes and takes off surrounding blanks, no-break spaces included.</summary>
    public static string Clean(string stored) =>
        (stored.Contains("_x", StringComparison.Ordinal) ? Escape().Replace(stored, Unescape) : stored).Trim();

    [GeneratedRegex("_x([0-9A-Fa-f]{4})_", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Escape();

    private static string Unescape(Match escape) =>
        ((char)int.Parse(escape.ValueSpan.Slice(2, 4), NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString();
}
