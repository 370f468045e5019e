using ExamDocs.Templates.DueLabel.Wording;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.DueLabel;

/// <summary>The sizes of type at which the words of a next-examination label fit; lengths in millimetres.</summary>
internal sealed class DueLabelText
{
    private const double Width = 65;
    private const double Height = 31.7;
    private const double Gap = 1.5;
    private const double NumberLine = 3.7;
    private const double Foot = 1.8;
    private const double FootLine = 2.15;

    // Type of the identity, from large to small; the day stands out from all of them.
    private static readonly double[] IdSizes = [4.8, 4.2, 3.6, 3.2, 2.9, 2.6];

    // Type of the day: smaller only for an identity that does not fit otherwise.
    private static readonly double[] DaySizes = [6.4, 5.8, 5.2, 4.8];

    // Beside a description the identity has one of the first sizes; one that needs smaller type is printed without a description.
    private const int SizesWithDescription = 4;

    private DueLabelText(double id, bool hasDescription, double day, IReadOnlyList<string> misfits) =>
        (IdMm, HasDescription, DayMm, Misfits) = (id, hasDescription, day, misfits);

    public double IdMm { get; }

    /// <summary>The description is printed whole or not at all: the identity names the item.</summary>
    public bool HasDescription { get; }

    /// <summary>Size of type of the day that is printed large.</summary>
    public double DayMm { get; }

    public IReadOnlyList<string> Misfits { get; }

    public static DueLabelText Fit(DueLabelModel model)
    {
        var column = Width - (model.Qr is null ? 0 : model.QrSideMm + Gap);
        var widest = column / TextWidth.Of(Printed.Day(model.Day), 1);
        var room = Height - NumberLine - (FootLine * (Lines(model.Origin) + Lines(DueLabelPhrases.Current.Caution(model.Identity.Number))));
        var days = 3.3 + (model.Also is null ? 0 : 3.1 * TextWidth.Lines(model.Also, 2.5, column));
        foreach (var (day, size, described) in Choices(widest))
        {
            var words =
                (TextWidth.Lines(model.Id, size, column) * size * 1.12)
                + (described ? TextWidth.Lines(Description(model), 2.3, column) * 2.3 * 1.2 : 0);
            if (words + (1.24 * day) + days <= room && model.QrSideMm <= room)
                return new DueLabelText(size, described, day, []);
        }
        return new DueLabelText(IdSizes[^1], false, Math.Min(DaySizes[^1], widest), [CauseOfMisfit(model)]);
    }

    public static string Description(DueLabelModel model) => Printed.Text(model.Item.Item.Description);

    // A visit's reference and a law of more than two lines take up the room; otherwise the identity does.
    private static string CauseOfMisfit(DueLabelModel model) =>
        Lines(model.Origin) > 2 ? "the visit's reference or the name of the law" : "the identity";

    private static IEnumerable<(double Day, double Size, bool Described)> Choices(double widest) =>
        from day in DaySizes
        from choice in IdSizes
            .Take(SizesWithDescription)
            .Select(s => (Size: s, Described: true))
            .Concat(IdSizes.Select(s => (Size: s, Described: false)))
        select (Math.Min(day, widest), choice.Size, choice.Described);

    private static int Lines(string text) => TextWidth.Lines(text, Foot, Width);
}
