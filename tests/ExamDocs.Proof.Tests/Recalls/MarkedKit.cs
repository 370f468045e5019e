using System.Globalization;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;

namespace ExamDocs.Proof.Tests.Recalls;

/// <summary>
/// A thing as it left the maker. It knows whether the notice means it, from numbers alone: no text is read to find out.
/// </summary>
/// <param name="Maker">Which maker, 0 is the notice's.</param>
/// <param name="Model">Which model, 0 is the notice's.</param>
/// <param name="Series">Which letters its serial number begins with.</param>
/// <param name="Number">Its number in the series.</param>
/// <param name="Month">Months since January 2020.</param>
internal sealed record MarkedKit(int Maker, int Model, int Series, int Number, int Month)
{
    private static readonly string[] Makers = ["Wenderby Harness Ltd", "Colverbeck Ropes GmbH", "Tarnholm Gear SARL"];
    private static readonly string[] Models = ["Hazelcroft 2", "Birchholm 2", "Hazelcroft 3"];

    public string MakerName => Makers[Maker];

    public string ModelName => Models[Model];

    public static MarkedKit Make(Random random) =>
        new(
            random.Next(6) == 0 ? random.Next(3) : 0,
            random.Next(6) == 0 ? random.Next(3) : 0,
            random.Next(3),
            random.Next(1, 3000),
            random.Next(60)
        );

    public PartialDate Made => new(2020 + Month / 12, 1 + Month % 12);

    /// <summary>As it is marked on the thing.</summary>
    public string Serial(SerialForm form) => form.Write(Series, Number);

    public Item Recorded(SerialForm form) =>
        new()
        {
            Id = string.Create(CultureInfo.InvariantCulture, $"K-{Number}"),
            Maker = MakerName,
            Model = ModelName,
            Serial = Serial(form),
            Manufactured = Made,
        };
}

/// <summary>How a maker writes serial numbers.</summary>
/// <param name="Letters">One beginning for each series, in the order of the alphabet; none for a maker who has no series.</param>
/// <param name="Between">Between beginning and number.</param>
/// <param name="Width">Digits of the number at least.</param>
/// <param name="Ending">Behind the number.</param>
/// <param name="HasCheck">A check character at the end.</param>
internal sealed record SerialForm(string[] Letters, string Between, int Width, string Ending, bool HasCheck)
{
    private static readonly SerialForm[] All =
    [
        new(["HZ", "IO", "QB"], "", 4, "", false),
        new(["HZ", "IO", "QB"], "-", 1, "", false),
        new(["A", "O", "S"], " ", 5, "", false),
        new(["23", "24", "25"], "-", 4, "", false),
        new(["23A", "23B", "24A"], "", 3, "", false),
        new(["X1-", "X2-", "X3-"], "", 4, "K", false),
        new(["HZ", "IO", "QB"], "", 4, "", true),
        new(["2023/", "2024/", "2025/"], "", 6, "", true),
    ];

    public static SerialForm Of(Random random) => All[random.Next(All.Length)];

    public string Write(int series, int number)
    {
        var digits = number.ToString(CultureInfo.InvariantCulture).PadLeft(Width, '0');
        var check = HasCheck ? string.Create(CultureInfo.InvariantCulture, $"-{(number * 7 + series) % 10}") : "";
        return Letters[series] + Between + digits + Ending + check;
    }
}

/// <summary>A notice, and what it means in numbers.</summary>
internal sealed record MeantKit(SafetyNotice Notice, Func<MarkedKit, bool> Means)
{
    public static MeantKit Make(Random random, SerialForm form)
    {
        var maker = new MarkedKit(0, 0, 0, 1, 0);
        var (kits, means) = (new List<NamedKit>(), new List<Func<MarkedKit, bool>>());
        for (var n = random.Next(1, 4); n > 0; n--)
        {
            var (kit, meant) = One(random, form);
            kits.Add(kit);
            means.Add(meant);
        }
        var notice = new SafetyNotice
        {
            Maker = maker.MakerName,
            Reference = "WH-SN-26-04",
            On = new(2026, 6, 1),
            Demands = "Take it out of use.",
            ReadAt = "letter",
            Affected = kits,
        };
        return new(notice, thing => thing.Maker == 0 && means.Exists(m => m(thing)));
    }

    private static (NamedKit Kit, Func<MarkedKit, bool> Means) One(Random random, SerialForm form)
    {
        var kit = new NamedKit { CheckCharacters = form.HasCheck ? 1 : 0 };
        Func<MarkedKit, bool> means = _ => true;
        void And(Func<MarkedKit, bool> also)
        {
            var before = means;
            means = thing => before(thing) && also(thing);
        }

        if (random.Next(4) > 0)
        {
            kit = kit with { Models = ["Hazelcroft 2"] };
            And(t => t.Model == 0);
        }
        switch (random.Next(5))
        {
            case 0 or 1:
                var (from, to) = Ordered(random);
                var (open, end) = (random.Next(5) == 0, random.Next(5) == 0);
                kit = kit with
                {
                    SerialRanges =
                    [
                        new(open && !end ? null : form.Write(from.Series, from.Number), end ? null : form.Write(to.Series, to.Number)),
                    ],
                };
                And(t => (open && !end || Before(from, (t.Series, t.Number))) && (end || Before((t.Series, t.Number), to)));
                break;
            case 2:
                (int Series, int Number)[] listed = [.. Enumerable.Range(0, 200).Select(_ => (random.Next(3), random.Next(1, 3000)))];
                kit = kit with { Serials = [.. listed.Select(l => form.Write(l.Series, l.Number))] };
                And(t => listed.Contains((t.Series, t.Number)));
                break;
            case 3:
                var series = random.Next(3);
                kit = kit with { SerialPatterns = [form.Letters[series] + form.Between + "*"], CheckCharacters = 0 };
                And(t => t.Series == series);
                break;
        }
        if (random.Next(3) == 0)
        {
            var first = random.Next(60);
            var last = random.Next(first, 60);
            kit = kit with
            {
                ManufacturedFrom = new MarkedKit(0, 0, 0, 1, first).Made,
                ManufacturedTo = new MarkedKit(0, 0, 0, 1, last).Made,
            };
            And(t => t.Month >= first && t.Month <= last);
        }
        return (kit, means);
    }

    private static bool Before((int Series, int Number) one, (int Series, int Number) other) =>
        one.Series < other.Series || (one.Series == other.Series && one.Number <= other.Number);

    private static ((int Series, int Number) From, (int Series, int Number) To) Ordered(Random random)
    {
        var (one, other) = ((random.Next(3), random.Next(1, 3000)), (random.Next(3), random.Next(1, 3000)));
        return Before(one, other) ? (one, other) : (other, one);
    }
}
