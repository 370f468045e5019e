using ExamDocs.Core.Determination;
using ExamDocs.Core.Identity;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// Keeps what was issued true to the latest version of a record. A document made from a corrected record takes the place of
/// those of its kind that an earlier version gave; what the corrected record no longer bears out is taken back. A label that
/// keeps an item from being used is never taken back without somebody's asking for it.
/// </summary>
internal sealed class Corrections
{
    private const string Corrected = "the record was corrected";

    /// <summary>What says that something may be used, or what is known of it; it must not outlive the record that said so.</summary>
    private static readonly string[] MustBeBorneOut =
    [
        DocumentTypes.Report.Kind,
        DocumentTypes.Certificate.Kind,
        DocumentTypes.DueLabel.Kind,
        DocumentTypes.EquipmentRecord.Kind,
        DocumentTypes.Evidence.Kind,
    ];

    private readonly DocumentRegister _register;
    private readonly Dictionary<DeterminedVisit, int> _numbers = new(ReferenceEqualityComparer.Instance);

    /// <param name="register">Where visits are remembered.</param>
    /// <param name="reason">Why an earlier version is corrected; null to say only that it was.</param>
    public Corrections(DocumentRegister register, string? reason) => (_register, Reason) = (register, reason);

    /// <summary>Why an earlier version is corrected, as typed; null where it was not.</summary>
    public string? Reason { get; }

    private string Words => string.IsNullOrWhiteSpace(Reason) ? Corrected : Reason;

    /// <summary>Takes over the number that the register has given to a visit.</summary>
    public void Take(DeterminedVisit visit, int number) => _numbers[visit] = number;

    /// <summary>Null for a visit that is not remembered.</summary>
    public int? NumberOf(DeterminedVisit visit) => _numbers.TryGetValue(visit, out var number) ? number : null;

    /// <summary>
    /// What a new document takes the place of: the same kind, of an earlier version, about nothing that the record does not speak of.
    /// </summary>
    public IReadOnlyList<Replacement> ReplacedBy(DocumentJob job) =>
        [
            .. from old in Earlier(job.Visit)
            where
                string.Equals(old.Kind, job.Type.Kind, StringComparison.Ordinal)
                && (old.CopyOf is null) == (job.CopyOf is null)
                && old.Items.Any(i => job.Items.Any(j => Same(j.Item.Id, i)))
                && IsWithin(old, job.Visit)
            select new Replacement(old.Number, Words),
        ];

    /// <summary>
    /// Number of the evidence file of this version of the record that has all items of a report; null where none was issued.
    /// </summary>
    public string? EvidenceOf(DocumentJob job) =>
        job.Type == DocumentTypes.Report && job.Visit.Record.Visit.Reference is { } reference && NumberOf(job.Visit) is { } number
            ? _register
                .CurrentOf(reference)
                .Where(d => d.Visit == number && string.Equals(d.Kind, DocumentTypes.Evidence.Kind, StringComparison.Ordinal))
                .Where(d => job.Items.All(i => d.Items.Any(e => Same(i.Item.Id, e))))
                .Select(d => d.Number)
                .LastOrDefault()
            : null;

    /// <summary>Withdraws what a corrected record no longer bears out, and names what somebody has to look at.</summary>
    /// <param name="standing">Numbers that the record gave now, or that it gave before and still gives.</param>
    public IReadOnlyList<string> TakeBack(IReadOnlySet<string> standing)
    {
        var remarks = new List<string>();
        foreach (var visit in _numbers.Keys)
        {
            foreach (
                var old in Earlier(visit)
                    .Where(o => !standing.Contains(o.Number) && o.Items.Any(i => visit.Everything.Any(e => Same(e.Item.Id, i))))
            )
                remarks.Add(TakeBack(old, visit));
        }
        return remarks;
    }

    private string TakeBack(DocumentStatus old, DeterminedVisit visit)
    {
        var about = $"{old.Number} ({old.Kind} of {string.Join(", ", old.Items)})";
        if (!IsWithin(old, visit))
            return $"{about} also speaks of what this record does not name; it stays current. Read it again, and withdraw it if it "
                + $"no longer holds: examdocs register withdraw {old.Number}.";
        if (!MustBeBorneOut.Contains(old.Kind, StringComparer.Ordinal))
            return $"{about} was given by an earlier version of the record; it stays current. Withdraw it if it no longer holds: "
                + $"examdocs register withdraw {old.Number}.";
        _register.Withdraw(old.Number, $"{Words}, and no longer bears it out");
        return $"{about} is withdrawn: {Words}, and no longer bears it out.";
    }

    /// <summary>Current documents of other versions of the same visit's record.</summary>
    private IEnumerable<DocumentStatus> Earlier(DeterminedVisit visit)
    {
        if (visit.Record.Visit is not { Reference: { } reference } typed || !_numbers.TryGetValue(visit, out var number))
            return [];
        // Two employers' visits may have one reference; a version that corrects both the employer and the day is another visit.
        var versions = _register
            .Visits.OfReference(reference)
            .Where(v => v.Visit != number && (v.ExaminedOn == typed.ExaminedOn || FirmName.MayBeSame(v.Employer, typed.Employer?.Name)))
            .Select(v => v.Visit)
            .ToHashSet();
        return _register.CurrentOf(reference).Where(d => d.Visit is { } of && versions.Contains(of));
    }

    private static bool IsWithin(DocumentStatus old, DeterminedVisit visit) =>
        old.Items.All(i => visit.Everything.Any(e => Same(e.Item.Id, i)));

    // A thing without an id stands under the empty one among the documents.
    private static bool Same(string? id, string item) => string.Equals(id ?? "", item, StringComparison.Ordinal);
}
