using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Teaching;

/// <summary>What visits recorded of items, written down in a line each.</summary>
internal static class ItemLives
{
    private static int _visit;

    /// <param name="id">Of the item.</param>
    /// <param name="day">Of the examination.</param>
    /// <param name="codes">Of the reasons; none where it may serve on.</param>
    public static ItemEntry Seen(
        string id,
        LocalDate day,
        string codes = "",
        string? firstUsed = "2024-01-01",
        string category = "rope-bridge",
        string? hardware = "ring",
        string examiner = "ex1",
        double diameter = 11,
        string? serial = null,
        string? defect = null,
        string? noted = null,
        string? name = null,
        string? visit = null
    )
    {
        var number = Interlocked.Increment(ref _visit);
        var item = new Item
        {
            Id = id,
            Category = category,
            Maker = "Fennock Harness",
            Model = "Fennock bridge",
            Serial = serial,
            FirstUsed = firstUsed is null ? null : Date(firstUsed),
        };
        var examination = new Examination
        {
            Item = id,
            Examiner = examiner,
            ExaminedOn = day,
            Exposure = hardware is null ? null : new Exposure { Hardware = hardware, Ground = "sandy" },
            Diameters = [new DiameterStation { PositionMm = 40, ReadingsMm = [(decimal)diameter] }],
            Observations =
            [
                Observed("cover-cut", defect is "cover-cut" ? ObservedState.Defect : ObservedState.Clear),
                Observed("cover-abrasion", noted is "cover-abrasion" ? ObservedState.Noted : ObservedState.Clear),
            ],
        };
        var outcome = new RememberedOutcome(
            id,
            codes is ['W', ..] ? "withdraw"
                : codes is ['U', ..] ? "undetermined"
                : "fit",
            codes.Split(' ')
        )
        {
            ExaminedOn = day,
        };
        var record = new ExaminationRecord
        {
            Visit = new Visit
            {
                Reference = visit ?? FormattableString.Invariant($"V-{number}"),
                Employer = new Party { Name = "Harrowmere Tree Works" },
                ExaminedOn = day,
            },
            People = name is null ? [] : [new Person { Id = examiner, Name = name }],
            Items = [item],
            Examinations = [examination],
        };
        var remembered = new RememberedVisit(number, "", record.Visit.Reference, null, "Harrowmere Tree Works", day, day);
        return new ItemEntry(remembered, outcome, item, record) { HasRow = true };
    }

    private static PartialDate Date(string text)
    {
        var parts = text.Split('-').Select(p => int.Parse(p, CultureInfo.InvariantCulture)).ToList();
        return new PartialDate(parts[0], parts.Count > 1 ? parts[1] : null, parts.Count > 2 ? parts[2] : null);
    }

    private static Observation Observed(string criterion, ObservedState state) =>
        new()
        {
            Criterion = criterion,
            State = state,
            StateAsTyped = Words.States.WordFor(state),
        };
}
