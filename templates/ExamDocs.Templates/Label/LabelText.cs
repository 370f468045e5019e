using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Wording;

namespace ExamDocs.Templates.Label;

/// <summary>The words of a label, at the largest size of type at which all of them fit; lengths in millimetres.</summary>
internal sealed class LabelText
{
    private const double Column = 85.5;
    private const double Indented = 70;

    // From large to small: type of the identity, type of the rest. The smallest is still printed text, about 6.8 pt.
    private static readonly (double Id, double Text)[] Sizes = [(12, 4.2), (10, 3.9), (8.4, 3.6), (7, 3.3), (5.6, 3), (4.6, 2.7), (3.8, 2.4)];

    // Capitals of 2.3 mm, about 5 minutes of arc at 1.5 m, which is what good eyesight resolves. A reason that would
    // make the type smaller gives way to a pointer to the record.
    private const int LegibleSizes = 4;

    private LabelText(string id, string description, IReadOnlyList<string> reasons, (int Id, int Text) steps) =>
        (Id, Description, Reasons, IdStep, TextStep) = (id, description, reasons, steps.Id, steps.Text);

    public string Id { get; }

    public string Description { get; }

    public IReadOnlyList<string> Reasons { get; }

    /// <summary>Which size of type the identity has, 0 the largest.</summary>
    public int IdStep { get; }

    /// <summary>Which size of type the rest has, 0 the largest.</summary>
    public int TextStep { get; }

    /// <summary>Everything at the largest size that holds it; cut short, and said to be, only where none does.</summary>
    /// <param name="id">Identity of the item.</param>
    /// <param name="description">What it is.</param>
    /// <param name="reasons">Why it is not to be used, the weightiest first.</param>
    /// <param name="others">The other lines of the label.</param>
    /// <param name="room">Height there is, millimetres.</param>
    public static LabelText Fit(string id, string description, IReadOnlyList<string> reasons, IReadOnlyList<string> others, double room)
    {
        return Fit(LegibleSizes) ?? Fit(Sizes.Length - 1) ?? Fit(Sizes.Length) ?? Cut(id, description, reasons);

        LabelText? Fit(int sizes) =>
            (from kept in Enumerable.Range(0, reasons.Count).Select(fewer => reasons.Count - fewer)
             let shown = Shown(reasons, kept)
             from steps in Steps(sizes)
             where Height(id, description, shown, others, (Sizes[steps.Id].Id, Sizes[steps.Text].Text)) <= room
             select new LabelText(id, description, shown, steps)).FirstOrDefault();
    }

    private static LabelText Cut(string id, string description, IReadOnlyList<string> reasons)
    {
        var mark = Phrases.Label.Shortened;
        IReadOnlyList<string> shown = [.. Shown(reasons, 1).Select((r, at) => at == 0 ? TextWidth.Shorten(r, 110, mark) : r)];
        return new LabelText(TextWidth.Shorten(id, 110, mark), TextWidth.Shorten(description, 120, mark), shown, (Sizes.Length - 1, Sizes.Length - 1));
    }

    // The identity stands out from the rest; only one too long for that comes closer to it.
    private static IEnumerable<(int Id, int Text)> Steps(int smallest)
    {
        var all =
            (from text in Enumerable.Range(0, smallest)
             from id in Enumerable.Range(text, Sizes.Length - text)
             select (id, text)).ToList();
        return all.Where(StandsOut).Concat(all.Where(s => !StandsOut(s)));
    }

    private static bool StandsOut((int Id, int Text) step) => Sizes[step.Id].Id >= 1.6 * Sizes[step.Text].Text;

    private static IReadOnlyList<string> Shown(IReadOnlyList<string> reasons, int kept) => kept >= reasons.Count
        ? reasons
        : [.. reasons.Take(kept), Phrases.Label.More(reasons.Count - kept)];

    private static double Height(string id, string description, IEnumerable<string> reasons, IEnumerable<string> others, (double Id, double Text) size)
    {
        var lines = TextWidth.Lines(description, size.Text, Column) + reasons.Concat(others).Sum(r => TextWidth.Lines(r, size.Text, Indented));
        return (TextWidth.Lines(id, size.Id, Column) * size.Id * 1.12) + (lines * size.Text * 1.25) + 4;
    }
}
