using System.Globalization;
using System.Text.RegularExpressions;
using ExamDocs.Core.Records;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Workbook.Reading;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>A load as a list has it: a number, with its unit beside it or in the heading.</summary>
internal static partial class ListLoad
{
    private static readonly Dictionary<string, string> Units = new(StringComparer.Ordinal)
    {
        ["kg"] = "kg",
        ["kgs"] = "kg",
        ["kilo"] = "kg",
        ["t"] = "t",
        ["to"] = "t",
        ["tonnes"] = "t",
        ["kn"] = "kN",
        ["persons"] = "persons",
        ["person"] = "persons",
        ["personen"] = "persons",
        ["personnes"] = "persons",
    };

    /// <summary>Null where it is not such a load, or its unit is not known: the value is then kept as it was typed.</summary>
    public static Load? Of(string text, string heading)
    {
        if (
            NumberAndUnit().Match(text.Trim()) is not { Success: true } match
            || TypedNumber.Of(match.Groups["n"].Value).Plain is not { } plain
        )
            return null;
        var unit = match.Groups["u"].Value is { Length: > 0 } typed
            ? Units.GetValueOrDefault(PlainWords.Of(typed))
            : PlainWords.Split(heading).Select(w => Units.GetValueOrDefault(w)).FirstOrDefault(u => u is not null);
        return unit is not null && decimal.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value > 0
            ? new Load { Value = value, Unit = unit }
            : null;
    }

    [GeneratedRegex(@"\A(?<n>[0-9][0-9 .,'’]*?)\s*(?<u>\p{L}*)\.?\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NumberAndUnit();
}
