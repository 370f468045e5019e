using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Cases;

/// <summary>A defect of an earlier examination that could become a danger later.</summary>
/// <param name="Words">The defect with the day it was found and the time by which it could become a danger.</param>
/// <param name="IsStillThere">True where this examination records it again, or answers its criterion with noted, doubt or defect.</param>
/// <param name="AnsweredBy">The remedy or renewal recorded since; null where there is none.</param>
internal sealed record EarlierDefect(Sentence Words, bool IsStillThere, Sentence? AnsweredBy);

/// <summary>
/// Finds what became of earlier defects. A defect does not heal: it is still there, or it was remedied, or a part was renewed.
/// </summary>
internal static class EarlierDefects
{
    /// <summary>Code of the finding about a defect that is neither recorded again nor remedied.</summary>
    public const string Unanswered = "CON022";

    /// <summary>Each defect once: a document that replaced another has it again.</summary>
    public static IEnumerable<EarlierDefect> Of(ItemCase item) =>
        (
            from earlier in item.Before
            from defect in earlier.Examination.Defects
            where defect.Danger is Danger.Later
            select new EarlierDefect(
                new(w => w.Evidence.EarlierDefect(defect.Description, defect.Criterion, earlier.On, defect.BecomesDangerOn)),
                IsStillThere(item, defect),
                AnsweredBy(item, earlier)
            )
        ).Distinct();

    private static bool IsStillThere(ItemCase item, Defect defect) =>
        item.Deciding.Any(e =>
            e.Examination.Defects.Any(d => d.Criterion is not null && Same(d.Criterion, defect.Criterion))
            || e.Examination.Observations.Any(o =>
                Same(o.Criterion, defect.Criterion) && o.State is ObservedState.Noted or ObservedState.Doubt or ObservedState.Defect
            )
        );

    /// <summary>A remedy or renewal since, in this record or in one between the two.</summary>
    private static Sentence? AnsweredBy(ItemCase item, EarlierExamination earlier)
    {
        var between = item.Before.Select(e => e.Stored).OfType<PastExamination>().ToList();
        var remedy = item
            .Remedies.Select(r => r.Row)
            .Concat(between.SelectMany(b => b.Remedies))
            .FirstOrDefault(r => IsSince(r.DoneOn, earlier));
        if (remedy is not null)
            return new(w => w.Evidence.Remedied(remedy));
        var renewal = item
            .Renewals.Select(r => r.Row)
            .Concat(between.SelectMany(b => b.Renewals))
            .FirstOrDefault(r => r.RemovedPart is not null && IsSince(r.DoneOn, earlier));
        return renewal is null ? null : new(w => w.Evidence.Renewed(renewal));
    }

    private static bool IsSince(NodaTime.LocalDate? day, EarlierExamination earlier) => day >= earlier.On;

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);
}
