using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>The answers to the criteria, decisive ones first.</summary>
internal static class ObservedEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons)
    {
        var criteria = item.Category?.Criteria ?? [];
        var seen = item.Deciding.SelectMany(e => e.ObservedOn(item)).ToList();
        return Known(criteria, seen, CriterionClass.Decisive)
            .Concat(seen.Where(o => o.Criterion is null).Select(o => Observed(o.Observation, null)))
            .Concat(Ledger.Reasons(reasons, Heading.Decisive, "W4", "D1", "W9", "U6", "D3"))
            .Concat(Known(criteria, seen, CriterionClass.Judged))
            .Concat(Known(criteria, seen, CriterionClass.Advisory));
    }

    private static IEnumerable<LedgerEntry> Known(
        IReadOnlyList<Criterion> criteria,
        List<(Observation Observation, Criterion? Criterion, string Path)> seen,
        CriterionClass of
    )
    {
        foreach (var criterion in criteria.Where(c => c.Class == of))
        {
            var answers = seen.Where(o => o.Criterion == criterion).ToList();
            foreach (var (observation, _, _) in answers)
                yield return Observed(observation, criterion);
            if (answers.Count == 0 && criterion.Required)
                yield return new(HeadingOf(criterion), Bearing.Open, new(w => w.Evidence.NoAnswerYet(criterion.Id)), criterion.Source)
                {
                    Criterion = criterion.Id,
                };
        }
    }

    private static LedgerEntry Observed(Observation observation, Criterion? criterion) =>
        new(
            HeadingOf(criterion),
            BearingOf(observation, criterion),
            new(w => w.Evidence.Answered(observation)),
            criterion?.Source ?? Ledger.TheRecord
        )
        {
            Criterion = observation.Criterion,
            State = observation.State,
            IsRoutine =
                criterion is not null
                && observation
                    is { Note: null, Photo: null, State: ObservedState.Clear or ObservedState.NoSign or ObservedState.NotApplicable },
        };

    private static Bearing BearingOf(Observation observation, Criterion? criterion) =>
        observation.State switch
        {
            ObservedState.Defect or ObservedState.Doubt => Bearing.Against,
            null or ObservedState.NotExamined => Bearing.Open,
            { } state when criterion is null || !criterion.Allows(state) => Bearing.Open,
            ObservedState.Clear or ObservedState.NoSign => Bearing.For,
            _ => Bearing.Neutral,
        };

    private static Heading HeadingOf(Criterion? criterion) =>
        criterion?.Class switch
        {
            CriterionClass.Judged => Heading.Judged,
            CriterionClass.Advisory => Heading.Advisory,
            _ => Heading.Decisive,
        };
}
