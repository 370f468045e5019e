using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// The renewals of an item that may be certified: a part was fitted, the item was examined no earlier than that day, and
/// item and part alike passed every check.
/// </summary>
/// <param name="Allowed">Those that may be certified.</param>
/// <param name="Refused">True where there is one that may not.</param>
internal sealed record CertifiableRenewals(IReadOnlyList<Renewal> Allowed, bool Refused)
{
    public static CertifiableRenewals Of(DeterminedVisit visit, DeterminedItem item)
    {
        var renewals = visit
            .Record.Renewals.Where(r =>
                item.Item.Id is not null && Same(r.Item, item.Item.Id) && r.FittedPart is not null && IsOfThisVisit(visit, item, r)
            )
            .ToList();
        var allowed = renewals.Where(r => IsPassed(item) && r.DoneOn <= item.ExaminedOn && PartPassed(visit, r.FittedPart!)).ToList();
        return new CertifiableRenewals(allowed, allowed.Count < renewals.Count);
    }

    /// <summary>A renewal from before an earlier examination in the record was certified then.</summary>
    private static bool IsOfThisVisit(DeterminedVisit visit, DeterminedItem item, Renewal renewal) =>
        !visit.Record.Examinations.Any(e =>
            Same(e.Item, item.Item.Id) && e.ExaminedOn < visit.Record.Visit.ExaminedOn && e.ExaminedOn >= renewal.DoneOn
        );

    private static bool PartPassed(DeterminedVisit visit, string part)
    {
        var parts = visit.Items.Where(p => Same(p.Item.Id, part)).ToList();
        return parts.Count == 1 && IsPassed(parts[0]);
    }

    private static bool IsPassed(DeterminedItem item) => item.MayBeReported && item.Outcome is (Outcome.Fit or Outcome.FitUntil);

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);
}
