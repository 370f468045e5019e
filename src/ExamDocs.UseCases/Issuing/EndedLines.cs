using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Templates;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// Items of a visit that another visit withdrew, lost or held: that they may be used is not printed again, though this visit
/// found it so.
/// </summary>
internal sealed class EndedLines
{
    private readonly IReadOnlyList<DeterminedItem> _items;

    private EndedLines(IReadOnlyList<DeterminedItem> items) => _items = items;

    /// <param name="register">The register.</param>
    /// <param name="number">The visit's number in it.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="found">Ids of items that a visit stored before this one found something against.</param>
    public static EndedLines Of(DocumentRegister register, int number, DeterminedVisit visit, IEnumerable<string> found)
    {
        var ended = register.Visits.EndsOf(number).Select(e => e.End.Item).Concat(found).ToHashSet(StringComparer.Ordinal);
        return new([.. visit.Items.Where(i => i.Outcome is Outcome.Fit or Outcome.FitUntil && ended.Contains(i.Item.Id ?? ""))]);
    }

    public IEnumerable<Refusal> Refused =>
        _items.Select(i => new Refusal(i.Item.Id ?? "", [], $"report, certificate and next-examination label, which another visit ended"));

    /// <summary>The job without these items; null where nothing is left of it.</summary>
    public DocumentJob? Without(DocumentJob job)
    {
        var ended = job.Items.Where(_items.Contains).ToList();
        if (
            ended.Count == 0
            || !(job.Type == DocumentTypes.Report || job.Type == DocumentTypes.Certificate || job.Type == DocumentTypes.DueLabel)
        )
            return job;
        return
            job.Type == DocumentTypes.Report
            && job.Without?.Invoke(job.LeftOut with { Items = [.. job.LeftOut.Items, .. ended] }) is { } rest
            ? rest.Like(job)
            : null;
    }
}
