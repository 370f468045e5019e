using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.DueLabel;

/// <summary>The sizes of type at which the words of a next-examination label fit; lengths in millimetres.</summary>
internal sealed class DueLabelText
{
    private const double Width = 65.6;
    private const double Height = 33.1;
    private const double Gap = 1.5;

    // The number stands at the left of whom to ring.
    private const double Number = 2.8;
    private const double NumberLine = 3.3;
    private const double NumberGap = 2;
    private const double Ring = 1.9;
    private const double RingLine = 2.2;
    private const double Foot = 1.7;
    private const double FootLine = 2;
    private const double Rule = 0.6;

    private const double AlsoType = 2.5;

    // Of the serial and the description.
    private const double Small = 2.3;
    private const double Line = Small * 1.2;

    // Type of the identity, from large to small; the day stands out from all of them.
    private static readonly double[] IdSizes = [4.8, 4.2, 3.6, 3.2, 2.9, 2.6];

    // Type of the day: smaller only for an identity that does not fit otherwise.
    private static readonly double[] DaySizes = [6.4, 5.8, 5.2, 4.8];

    // Beside a description the identity has one of the first sizes; one that needs smaller type is printed without a description.
    private const int SizesWithDescription = 4;

    private DueLabelText(ItemCode code, double id, bool hasDescription, double day, IReadOnlyList<string> misfits) =>
        (Code, IdMm, HasDescription, DayMm, Misfits) = (code, id, hasDescription, day, misfits);

    /// <summary>The code with the longest text beside which the words fit.</summary>
    public ItemCode Code { get; }

    public double IdMm { get; }

    /// <summary>The description is printed whole or not at all: the identity names the item.</summary>
    public bool HasDescription { get; }

    /// <summary>The later of the two days, in as many words as have room on a line; null where there is one day only.</summary>
    public string? Also { get; private init; }

    /// <summary>Size of type of the day that is printed large.</summary>
    public double DayMm { get; }

    public IReadOnlyList<string> Misfits { get; }

    public static DueLabelText Fit(DueLabelModel model)
    {
        var room = Height - Rule - Math.Max(NumberLine, RingLine * RingLines(model)) - (FootLine * Lines(model.Foot));
        var most = (decimal)Math.Max(room, 0);
        var codes = ItemCode.Choices(model.CodeText, new(0.5m, most), new(0.43m, most), new(0.375m, most));
        if (codes.Select(code => Beside(code, model, room)).FirstOrDefault(text => text is not null) is { } fitting)
            return fitting;
        var smallest = codes.LastOrDefault() ?? ItemCode.None(model.CodeText);
        var day = Math.Min(DaySizes[^1], Column(smallest) / TextWidth.Of(Printed.Day(model.Day), 1));
        return new DueLabelText(smallest, IdSizes[^1], false, day, [CauseOfMisfit(model)]);
    }

    public static string Description(DueLabelModel model) => Printed.Text(model.Item.Item.Description);

    private static DueLabelText? Beside(ItemCode code, DueLabelModel model, double room)
    {
        var column = Column(code);
        var also = model.Also is { } whole && TextWidth.Of(whole, AlsoType) > column ? model.ShortAlso : model.Also;
        var days = 3.3 + (also is null ? 0 : 3.1 * TextWidth.Lines(also, AlsoType, column));
        return (
            from choice in Choices(column / TextWidth.Of(Printed.Day(model.Day), 1))
            let words = (TextWidth.Lines(model.Id, choice.Size, column) * choice.Size * 1.12)
                + (Line * TextWidth.Lines(model.Serial, Small, column))
                + (choice.Described ? Line * TextWidth.Lines(Description(model), Small, column) : 0)
            where words + (1.24 * choice.Day) + days <= room
            select new DueLabelText(code, choice.Size, choice.Described, choice.Day, []) { Also = also }
        ).FirstOrDefault();
    }

    private static double Column(ItemCode code) => Width - (code.Matrix is null ? 0 : (double)code.SideMm + Gap);

    // A visit's reference, a law or a name of more than two lines takes up the room; otherwise what stands above does.
    private static string CauseOfMisfit(DueLabelModel model) =>
        Lines(model.Origin) > 2 ? "the visit's reference or the name of the law"
        : RingLines(model) > 2 ? "the name of whom to ring"
        : model.Serial.Length > model.Id.Length + 12 ? "the serial"
        : "the identity";

    private static IEnumerable<(double Day, double Size, bool Described)> Choices(double widest) =>
        from day in DaySizes
        from choice in IdSizes
            .Take(SizesWithDescription)
            .Select(s => (Size: s, Described: true))
            .Concat(IdSizes.Select(s => (Size: s, Described: false)))
        select (Math.Min(day, widest), choice.Size, choice.Described);

    private static int RingLines(DueLabelModel model) =>
        TextWidth.Lines(model.Whom.Line, Ring, Width - TextWidth.Of(model.Identity.Number, Number) - NumberGap);

    private static int Lines(string text) => TextWidth.Lines(text, Foot, Width);
}
