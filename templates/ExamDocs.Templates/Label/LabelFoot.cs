using ExamDocs.Templates.Label.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Label;

/// <summary>The foot of a label: its number and where it comes from, with the code beside them.</summary>
internal static class LabelFoot
{
    // As in the style sheet, millimetres.
    private const double Width = 86;
    private const double Gap = 2;
    private const double RuleAndPadding = 1.2;
    private const double Number = 6;
    private const double Text = 2.5;
    private const double Small = 1.95;
    private const double Between = 0.5;
    private const double Line = 1.25;

    private static LabelPhrases Words => LabelPhrases.Current;

    public static string Issued(LabelModel label) => $"{Phrases.Common.Issued} {Printed.Day(label.Identity.IssuedOn)} · {Words.PageOne}";

    public static string Examined(LabelModel label) =>
        $"{(label.TakenOutBy is { } notice ? Words.TakenOutBy(notice) : Words.ExaminedBy)} {label.ShownExaminer}";

    public static string Caution(LabelModel label) => $"{Words.Verify(label.Identity.Number)} {Words.Caution(label.Item.RegimeId)}";

    public static string Law(LabelModel label) =>
        label.TakenOutBy is null ? Words.Regime(label.Regime.ShortLaw) : Words.Law(label.Regime.ShortLaw);

    /// <summary>Height of the foot, millimetres: that of its lines or of its code, whichever is higher.</summary>
    public static double Height(LabelModel label)
    {
        var column = Width - (label.Code.Matrix is null ? 0 : (double)label.Code.SideMm + Gap);
        var facts =
            Number
            + (Line * Text * (TextWidth.Lines(Issued(label), Text, column) + TextWidth.Lines(Examined(label), Text, column)))
            + (Line * Small * (TextWidth.Lines(Caution(label), Small, column) + TextWidth.Lines(Law(label), Small, column)))
            + (2 * Between);
        return RuleAndPadding + Math.Max(facts, (double)label.Code.SideMm);
    }
}
