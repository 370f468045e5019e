using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared;

namespace ExamDocs.Templates.DueLabel;

/// <summary>
/// The words and the code of a face. Nothing is cut: what has no room is left out in a stated order, and where the item, its serial,
/// the day or the number have none, the face is not to be printed.
/// </summary>
internal sealed class DueFaceLayout
{
    // Of the type of the words, millimetres; the largest fills a tag.
    private const double Largest = 4.6;
    private const double Step = 0.1;

    private DueFaceLayout(ItemCode code, IReadOnlyList<DueLine> lines, IReadOnlyList<string> misfits) =>
        (Code, Lines, Misfits) = (code, lines, misfits);

    public ItemCode Code { get; }

    public IReadOnlyList<DueLine> Lines { get; }

    public IReadOnlyList<string> Misfits { get; }

    public static DueFaceLayout Fit(DueLabelModel label, DueFace face)
    {
        var codes = ItemCode.Choices(label.CodeText, [.. face.ModulesMm.Select(m => new CodeRoom(m, (decimal)face.InnerHeightMm))]);
        var none = ItemCode.None(label.CodeText);
        // The longest text comes first, then what the words say, then the coarsest code, then how far the item and the day stand out.
        return codes
            .Append(none)
            .GroupBy(c => (c.Text, IsDrawn: c.Matrix is not null))
            .Select(g => Best(label, face, [.. g]))
            .FirstOrDefault(f => f is not null)
            ?? new DueFaceLayout(none, [], [Cause(label, face)]);
    }

    private static DueFaceLayout? Best(DueLabelModel label, DueFace face, IReadOnlyList<ItemCode> codes) =>
        (
            from words in DueFaceWords.Choices(label, face, hasNumber: codes[0].Matrix is not null)
            from code in codes.Index()
            orderby words.Poverty, code.Index, words.Weakness
            let lines = Fitting(words, face, code.Item)
            where lines is not null
            select new DueFaceLayout(code.Item, lines, [])
        ).FirstOrDefault();

    /// <returns>The lines in the largest type in which they have room; null where they have none.</returns>
    private static IReadOnlyList<DueLine>? Fitting(DueFaceWords words, DueFace face, ItemCode code)
    {
        var column = face.InnerWidthMm - (double)code.SideMm;
        return (
            from step in Enumerable.Range(0, 1 + (int)Math.Round((Largest - DueLine.SmallestMm) / Step))
            let lines = words.Set(Largest - (step * Step), column)
            where lines is not null && Height(lines, column) <= face.InnerHeightMm
            select lines
        ).FirstOrDefault();
    }

    private static double Height(IReadOnlyList<DueLine> lines, double column) =>
        lines.Sum(l => TextWidth.Lines(l.Text, l.SizeMm, column) * l.SizeMm * DueLine.LineHeight);

    // Whichever of the two takes more lines than it would have to.
    private static string Cause(DueLabelModel label, DueFace face) =>
        TextWidth.Of(label.Item.Item.Serial ?? "", DueLine.SmallestMm)
        > Math.Max(face.InnerWidthMm / 2, TextWidth.Of(label.Id, DueLine.SmallestMm))
            ? "the serial"
            : "the identity";
}
