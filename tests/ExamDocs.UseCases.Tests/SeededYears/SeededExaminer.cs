using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Tests.SeededYears;

/// <summary>One of the examiners of the invented firm's kit: what this one sees and writes down.</summary>
/// <param name="id">Of the person.</param>
/// <param name="readiness">How readily this one notes wear, about 1.</param>
/// <param name="chance">The one source of chance of the whole firm.</param>
internal sealed class SeededExaminer(string id, double readiness, Random chance)
{
    private static readonly double[] PartOfWear = [0.3, 0.7, 1, 0.7, 0.3];

    public string Id => id;

    /// <summary>An examination that finds no more than wear.</summary>
    public Examination Examines(SeededItem item, LocalDate day, Basis basis) =>
        new()
        {
            Item = item.Id,
            Examiner = id,
            Basis = basis,
            Event =
                basis is Basis.Exceptional
                    ? new ExceptionalEvent { What = "Safety notice of the maker, TN-2024-02", On = new LocalDate(2024, 9, 2) }
                    : null,
            Observations = [.. item.Model.Criteria.Select(c => Sees(item, c, day))],
            Diameters = item.Model.IsBridge ? Measures(item, day) : [],
            Exposure = item.Exposure,
            Conclusion = Conclusion.Fit,
        };

    /// <summary>The same examination, with a defect that is a danger now.</summary>
    public static Examination Withdrawn(Examination examination, string criterion, string what, LocalDate day) =>
        examination with
        {
            Observations =
            [
                .. examination.Observations.Select(o =>
                    string.Equals(o.Criterion, criterion, StringComparison.Ordinal) ? Seen(criterion, ObservedState.Defect, what) : o
                ),
            ],
            Defects =
            [
                new Defect
                {
                    Criterion = criterion,
                    Part = "Working part",
                    Description = what,
                    Danger = Danger.Now,
                    Remedy = "To be replaced",
                    ImminentRisk = false,
                    Notified = new Notification
                    {
                        Whom = "Ines Calloway, yard manager",
                        How = "by word of mouth on the spot",
                        On = day,
                    },
                },
            ],
            Conclusion = Conclusion.Withdraw,
        };

    private Observation Sees(SeededItem item, Criterion criterion, LocalDate day)
    {
        var isWear = criterion.AllowsNoted && criterion.Class is not CriterionClass.Decisive;
        var likely = Math.Min(0.6, 0.015 * item.MonthsOn(day)) * readiness;
        // Both examiners see the same wear: most of the chance lies in the item, some in who looks.
        var shown = Hidden(item, criterion);
        return isWear && shown + (0.15 * (chance.NextDouble() - 0.5)) < likely
            ? Seen(criterion.Id, ObservedState.Noted, "Normal wear for its age")
            : Seen(criterion.Id, ObservedState.Clear, null);
    }

    private static double Hidden(SeededItem item, Criterion criterion)
    {
        var sum = 17;
        foreach (var letter in item.Id + criterion.Id)
            sum = ((sum * 31) + letter) % 1009;
        return sum / 1009.0;
    }

    private static Observation Seen(string criterion, ObservedState state, string? note) =>
        new()
        {
            Criterion = criterion,
            State = state,
            StateAsTyped = Words.States.WordFor(state),
            Note = note,
        };

    private List<DiameterStation> Measures(SeededItem item, LocalDate day)
    {
        var worn = item.WearPerMonth * item.MonthsOn(day);
        return
        [
            .. PartOfWear.Select(
                (part, at) =>
                    new DiameterStation
                    {
                        PositionMm = 40 + (75 * at),
                        ReadingsMm = [Reading(11.05 - (worn * part)), Reading(11 - (worn * part))],
                    }
            ),
        ];
    }

    /// <summary>A calliper that shows 0.05 mm, with as much error.</summary>
    private decimal? Reading(double actual) => decimal.Round((decimal)(actual + ((chance.NextDouble() - 0.5) * 0.08)) * 20) / 20;
}
