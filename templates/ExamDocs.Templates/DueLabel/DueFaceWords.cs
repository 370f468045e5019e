using ExamDocs.Templates.DueLabel.Wording;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.DueLabel;

/// <summary>A choice of what a face says.</summary>
internal sealed class DueFaceWords
{
    // Type of the origin and the caution, as a part of that of the plain words.
    private const double SmallType = 0.7;

    // The first two of what is left out.
    private const int SmallPrint = 2;

    /// <summary>
    /// What is left out where there is no room, in this order. The item, its serial, the day and what it means never are.
    /// </summary>
    private static readonly DuePart[] LeftOut =
    [
        DuePart.Caution,
        DuePart.Origin,
        DuePart.Description,
        DuePart.Also,
        DuePart.Whom,
        DuePart.Number,
    ];

    // The item and the day are to stand out before these are kept.
    private const int LeftOutForEmphasis = 3;

    private readonly DueLabelModel _label;
    private readonly IReadOnlySet<DuePart> _parts;
    private readonly Emphasis _emphasis;

    private DueFaceWords(DueLabelModel label, int less, (int Index, Emphasis Item) emphasis)
    {
        (_label, _emphasis) = (label, emphasis.Item);
        _parts = Enum.GetValues<DuePart>().Except(LeftOut.Take(less)).ToHashSet();
        Poverty = (emphasis.Item.JoinsDay ? LeftOut.Length : 0) + Math.Max(less, LeftOutForEmphasis);
        Weakness = (emphasis.Index * LeftOut.Length) + less;
    }

    /// <summary>How much that matters it leaves out; a day on the line of its words counts as more than all of it.</summary>
    public int Poverty { get; }

    /// <summary>How little the item and the day stand out, then how much else it leaves out.</summary>
    public int Weakness { get; }

    private static DueLabelPhrases Words => DueLabelPhrases.Current;

    /// <summary>Every choice that may be printed.</summary>
    /// <param name="label">The label as issued.</param>
    /// <param name="face">Where it is printed.</param>
    /// <param name="hasNumber">The code has the number, so that the words may go without.</param>
    public static IEnumerable<DueFaceWords> Choices(DueLabelModel label, DueFace face, bool hasNumber) =>
        from emphasis in Emphasis.StrongestFirst.Index()
        from less in Enumerable.Range(0, LeftOut.Length + (hasNumber ? 1 : 0))
        where face.HasSmallPrint || less >= SmallPrint
        select new DueFaceWords(label, less, emphasis);

    /// <param name="type">Size of type of the plain words, millimetres.</param>
    /// <param name="column">Width, millimetres.</param>
    /// <returns>Null where the day would not stand out so.</returns>
    public IReadOnlyList<DueLine>? Set(double type, double column)
    {
        var (day, size) = Day(type, column);
        if (size < _emphasis.LeastDay * type)
            return null;
        return
        [
            .. from part in _parts.Order()
            let text = part is DuePart.Day ? day
            : _emphasis.JoinsDay && part is DuePart.Caption ? null
            : Text(part, type, column)
            where text is not null
            select new DueLine(
                part,
                text,
                part switch
                {
                    DuePart.Day => size,
                    DuePart.Id => Math.Clamp(column / TextWidth.Of(text, 1), type, _emphasis.Id * type),
                    DuePart.Origin or DuePart.Caution => Math.Max(DueLine.SmallestMm, SmallType * type),
                    _ => type,
                }
            ),
        ];
    }

    private string? Text(DuePart part, double type, double column) =>
        part switch
        {
            DuePart.Id => _label.Id,
            DuePart.Serial => Shorter(_label.Serial, SerialLine.Short(_label.Item.Item), type, column),
            DuePart.Description => DueLabelText.Description(_label),
            DuePart.Caption => Shorter(_label.Caption, _label.ShortCaption, type, column),
            DuePart.Also => _label.Also is { } also ? Shorter(also, _label.ShortAlso!, type, column) : null,
            DuePart.Whom => Shorter(_label.Whom.Line, _label.Whom.ShortLine, type, column),
            DuePart.Number => _label.Identity.Number,
            DuePart.Origin => _label.Origin,
            DuePart.Caution => _label.Caution,
            _ => null,
        };

    private (string Text, double Size) Day(double type, double column)
    {
        if (_emphasis.JoinsDay)
            return ($"{_label.ShortCaption} {Words.ShortDay(_label.Day)}", type);
        var whole = Sized(Printed.Day(_label.Day));
        return whole.Size >= _emphasis.LeastDay * type ? whole : Sized(Words.ShortDay(_label.Day));

        (string Text, double Size) Sized(string text) => (text, Math.Min(_emphasis.Day * type, column / TextWidth.Of(text, 1)));
    }

    // The whole words where they have room on one line.
    private static string Shorter(string whole, string brief, double type, double column) =>
        TextWidth.Of(whole, type) <= column ? whole : brief;
}
