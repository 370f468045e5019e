using ExamDocs.Templates.Label.Wording;

namespace ExamDocs.Templates.Label;

/// <summary>The words of a label, at the largest size of type at which all of them fit; lengths in millimetres.</summary>
internal sealed class LabelText
{
    private const double Column = 85.5;

    // Between the lines of the label, and between identity and serial on one line; millimetres.
    private const double Gaps = 4.6;
    private const double SerialGap = 3;

    // Type of the names at the left, as a part of the size of type.
    private const double NameType = 0.86;

    // From large to small: type of the identity, type of the rest. The smallest is still printed text, about 6.8 pt.
    private static readonly (double Id, double Text)[] Sizes =
    [
        (16, 5.6),
        (14, 4.9),
        (12, 4.2),
        (10, 3.9),
        (8.4, 3.6),
        (7, 3.3),
        (5.6, 3),
        (4.6, 2.7),
        (3.8, 2.4),
    ];

    // Characters of each that are kept where not everything fits even in the smallest type, the mildest cut first.
    private static readonly int[] Cuts = [110, 80, 60, 40, 25, 15];

    private LabelText(LabelWords words, (int Id, int Text) steps, IReadOnlyList<string> misfits) =>
        (Words, IdStep, TextStep, Misfits) = (words, steps.Id, steps.Text, misfits);

    /// <summary>As they are printed.</summary>
    public LabelWords Words { get; }

    /// <summary>Which size of type the identity has, 0 the largest.</summary>
    public int IdStep { get; }

    /// <summary>Which size of type the rest has, 0 the largest.</summary>
    public int TextStep { get; }

    public double TextMm => Sizes[TextStep].Text;

    /// <summary>Names what was cut short; empty where nothing was.</summary>
    public IReadOnlyList<string> Misfits { get; }

    /// <summary>Everything at the largest size at which it fits; cut short, and marked so, only where it fits at none.</summary>
    /// <param name="words">What it says.</param>
    /// <param name="room">Height available, millimetres.</param>
    /// <param name="capitals">Height of capitals that are read from the reading distance, millimetres.</param>
    public static LabelText Fit(LabelWords words, double room, double capitals)
    {
        // A reason for which the type would be smaller than that is left out, and the label points to the record.
        var legible = Sizes.Count(s => s.Text * ReadingDistance.Capitals * (double)ReadingDistance.SmallestScale >= capitals);
        return Fit(legible) ?? Fit(Sizes.Length - 1) ?? Fit(Sizes.Length) ?? Cut(words, room);

        // An identity that stands out is worth more than a further reason, and any reason more than the keeper's name.
        LabelText? Fit(int sizes) => Among(Steps(sizes).Where(StandsOut)) ?? Among(Steps(sizes).Where(s => !StandsOut(s)));

        // Whether the reasons have room at all is known from their length; to break them into lines takes long where they are endless.
        LabelText? Among(IEnumerable<(int Id, int Text)> choices) =>
            (
                from kept in Enumerable.Range(0, words.Reasons.Count).Select(fewer => words.Reasons.Count - fewer)
                from keptBy in new[] { words.KeptBy, null }
                let shown = words with
                {
                    Reasons = Shown(words.Reasons, kept),
                    KeptBy = keptBy,
                }
                let ems = shown.Reasons.Sum(r => TextWidth.Of(r, 1))
                from steps in choices
                where ems * Sizes[steps.Text].Text * Sizes[steps.Text].Text <= room * Column
                where Height(shown, (Sizes[steps.Id].Id, Sizes[steps.Text].Text)) <= room
                select new LabelText(shown, steps, [])
            ).FirstOrDefault();
    }

    private static LabelText Cut(LabelWords words, double room)
    {
        var shown = words with { Reasons = Shown(words.Reasons, 1), KeptBy = null };
        var cuts = Cuts.Select(most => Cut(shown, most)).ToList();
        var cut = cuts.Find(c => Height(c, Sizes[^1]) <= room) ?? cuts[^1];
        string[] misfits =
        [
            .. Misfit(cut.Id, shown.Id, "the identity"),
            .. Misfit(cut.Description, shown.Description, "the description"),
            .. Misfit(cut.Reasons[0], shown.Reasons[0], "the reason"),
            .. Misfit(cut.Serial, shown.Serial, "the serial"),
            .. Misfit(cut.Whom, shown.Whom, "whom to ring"),
        ];
        return new LabelText(cut, (Sizes.Length - 1, Sizes.Length - 1), misfits);
    }

    private static LabelWords Cut(LabelWords words, int most)
    {
        var mark = LabelPhrases.Current.Shortened;
        return words with
        {
            Id = TextWidth.Shorten(words.Id, most, mark),
            Description = TextWidth.Shorten(words.Description, most, mark),
            Reasons = [TextWidth.Shorten(words.Reasons[0], most, mark), .. words.Reasons.Skip(1)],
            Serial = TextWidth.Shorten(words.Serial, Math.Max(most, 40), mark),
            Whom = TextWidth.Shorten(words.Whom, Math.Max(most, 40), mark),
        };
    }

    private static string[] Misfit(string printed, string whole, string what) =>
        string.Equals(printed, whole, StringComparison.Ordinal) ? [] : [what];

    // The identity is much larger than the rest; only one too long for that is closer in size.
    private static IEnumerable<(int Id, int Text)> Steps(int smallest) =>
        from text in Enumerable.Range(0, smallest)
        from id in Enumerable.Range(text, Sizes.Length - text)
        select (id, text);

    private static bool StandsOut((int Id, int Text) step) => Sizes[step.Id].Id >= 1.6 * Sizes[step.Text].Text;

    private static IReadOnlyList<string> Shown(IReadOnlyList<string> reasons, int kept) =>
        kept >= reasons.Count ? reasons : [.. reasons.Take(kept), LabelPhrases.Current.More(reasons.Count - kept)];

    private static double Height(LabelWords words, (double Id, double Text) size)
    {
        var names = LabelPhrases.Current;
        var lines =
            TextWidth.Lines(words.Description, size.Text, Column)
            + SerialLines(words, size)
            + Row(names.Why, size.Text, words.Reasons)
            + Row(names.Since, size.Text, [words.Since])
            + Row(names.Release, size.Text, [words.Release])
            + Row(names.Ask, size.Text, [words.Whom])
            + (words.KeptBy is { } keeper ? Row(names.KeptBy, size.Text, [keeper]) : 0);
        return (TextWidth.Lines(words.Id, size.Id, Column) * size.Id * 1.12) + (lines * size.Text * 1.25) + Gaps;
    }

    // The serial stands beside the identity where both have room on a line.
    private static int SerialLines(LabelWords words, (double Id, double Text) size) =>
        TextWidth.Of(words.Id, size.Id) + SerialGap + TextWidth.Of(words.Serial, size.Text) <= Column
            ? 0
            : TextWidth.Lines(words.Serial, size.Text, Column);

    private static int Row(string name, double text, IReadOnlyList<string> values)
    {
        var names = LabelPhrases.Current.NameColumnEms * text;
        return Math.Max(TextWidth.Lines(name, NameType * text, names), values.Sum(v => TextWidth.Lines(v, text, Column - names)));
    }
}
