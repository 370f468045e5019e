using System.Globalization;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.Label;

namespace ExamDocs.UseCases.Issuing;

/// <summary>What does not fit on a label, or stands on it too small to be read.</summary>
internal static class LabelShortfalls
{
    public static IReadOnlyList<Shortfall> Of(LabelModel label)
    {
        var shortfalls = label.Misfits.Select(m => new Shortfall(PrintRules.LabelHoldsItsText, $"no room for the whole of {m}")).ToList();
        if (label.WordsLegibleFromMetres < (double)label.Reading.Metres)
        {
            var from = Math.Floor(label.WordsLegibleFromMetres * 10) / 10;
            shortfalls.Add(
                new Shortfall(
                    PrintRules.LabelIsLegible,
                    string.Create(CultureInfo.InvariantCulture, $"its words are read from {from} m, not from {label.Reading.Metres} m")
                )
            );
        }
        return shortfalls;
    }

    public static IReadOnlyList<Shortfall> Of(DueLabelModel label) =>
        [.. label.Misfits.Select(m => new Shortfall(PrintRules.LabelHoldsItsText, $"no room for the whole of {m}"))];
}
