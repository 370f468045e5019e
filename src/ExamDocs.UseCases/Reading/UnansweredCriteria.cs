using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Reading;

/// <summary>
/// The missing answers that leave an item undetermined (U1), at the places where they belong. They are not findings of a check, but
/// what the examiner still has to fill in.
/// </summary>
internal static class UnansweredCriteria
{
    /// <summary>An answer that was typed and cannot be told is asked for where it stands.</summary>
    private static PossibleCause? CauseOf(Examination examination, int at, string criterion) =>
        examination
            .Observations.Index()
            .Where(o => string.Equals(o.Item.Criterion, criterion, StringComparison.Ordinal) && o.Item.State is null)
            .Select(o => new PossibleCause(FormattableString.Invariant($"/examinations/{at}/observations/{o.Index}/state"), "CON016"))
            .FirstOrDefault();

    public static IEnumerable<Finding> Of(DeterminedVisit visit)
    {
        var places = visit.Record.Examinations.Index().ToDictionary(e => (object)e.Item, e => e.Index, ReferenceEqualityComparer.Instance);
        var rule = OutcomeRules.All.First(r => r.Code is "U1");
        foreach (
            var item in visit.Items.Where(i => i.Reasons.Any(r => r.Code is "U1") && i is { Category: not null, Examination: not null })
        )
        {
            var at = places[item.Examination!];
            foreach (var criterion in item.Category!.Criteria.Where(c => c.IsMissingIn(item.Examination!)))
            {
                yield return new Finding(
                    rule.Code,
                    Severity.Error,
                    string.Create(System.Globalization.CultureInfo.InvariantCulture, $"/examinations/{at}/observations/{criterion.Id}"),
                    $"{criterion.Id} has no answer, so the item is undetermined",
                    $"Examine it and choose an answer: {new ProgramText(criterion.Question)}",
                    rule.Source
                )
                {
                    Item = item.Item.Id,
                    PossibleCause = CauseOf(item.Examination!, at, criterion.Id),
                };
            }
        }
    }
}
