using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// Keeps issued documents in step with the latest version of a record. A document whose content is still what the record says stays current
/// under its number, however the others were asked for. One whose content changed is replaced by its successor; what the corrected record
/// no longer justifies is taken back. A label that keeps an item from being used is never taken back without somebody's asking for it.
/// </summary>
/// <param name="register">Where visits are remembered.</param>
/// <param name="reason">Why an earlier version is corrected, as typed; null to say what differs.</param>
/// <param name="rules">The categories and regimes that records can name; left out, the built-in ones.</param>
internal sealed class Corrections(DocumentRegister register, string? reason, KnownRules? rules = null) : IAsyncDisposable
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

    private readonly IssuedContent _content = new(register, rules ?? KnownRules.BuiltIn);
    private readonly VisitChanges _changes = new(register);
    private readonly Dictionary<DeterminedVisit, Version> _versions = new(ReferenceEqualityComparer.Instance);

    private sealed record Version(int Number, Func<Observation, PhotoPrint?> Photos, EarlierVersions Earlier);

    /// <summary>Notes the number that the register gave to a visit; call it before the visit's documents are issued.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="number">Its number.</param>
    /// <param name="photos">Its photos; left out, none.</param>
    public void Take(DeterminedVisit visit, int number, Func<Observation, PhotoPrint?>? photos = null) =>
        _versions[visit] = new(number, photos ?? (static _ => null), EarlierVersions.Of(register, visit, number));

    /// <summary>The last visit that the run knows of; null until its visits are stored.</summary>
    public int? KnownUpTo { get; set; }

    /// <summary>Null for a visit that is not remembered.</summary>
    public int? NumberOf(DeterminedVisit visit) => _versions.GetValueOrDefault(visit)?.Number;

    /// <summary>The current document that says what a job would print; null where none does.</summary>
    public async Task<IssuedDocument?> StandingAsync(DocumentJob job)
    {
        foreach (var old in _versions.GetValueOrDefault(job.Visit)?.Earlier.Like(job) ?? [])
        {
            if (_content.Read(old) is { } document && document.IsInTheFormOf(job) && await _content.SaysTheSameAsync(document, job))
                return register.FindByNumber(old.Number);
        }
        return null;
    }

    /// <summary>
    /// What a new document takes the place of: documents of its kind about its items that no longer hold, and the same document under
    /// another head or signature. One in another form that still holds is left alone.
    /// </summary>
    public async Task<IReadOnlyList<(string Number, string? Reason)>> ReplacedByAsync(DocumentJob job)
    {
        if (_versions.GetValueOrDefault(job.Visit) is not { } version)
            return [];
        var replaced = new List<(string, string?)>();
        foreach (var old in version.Earlier.Like(job).Concat(version.Earlier.ReplacedInOtherLanguages(job)))
        {
            var document = _content.Read(old);
            var isSame = document?.IsInTheFormOf(job) is true;
            if (!(isSame || (version.Earlier.IsOfOther(old) && IsWithin(old, job.Visit))))
                continue;
            var holds = document is not null && await _content.StillHoldsAsync(document, job.Visit, version.Photos);
            if (isSame || !holds)
                replaced.Add((old.Number, reason ?? CorrectionReason.Of(document, job, holds, () => _changes.Since(document!, job.Visit))));
        }
        return replaced;
    }

    /// <summary>What the register notes of a replacement for which no reason is known.</summary>
    public static Replacement Noted((string Number, string? Reason) replaced) => new(replaced.Number, replaced.Reason ?? Corrected);

    /// <summary>
    /// Number of the evidence file of this version of the record that has all items of a report; null where none was issued.
    /// </summary>
    public string? EvidenceOf(DocumentJob job) =>
        job.Type == DocumentTypes.Report && job.Visit.Record.Visit.Reference is not null && NumberOf(job.Visit) is { } number
            ? register
                .CurrentOf(number)
                .Where(d => string.Equals(d.Kind, DocumentTypes.Evidence.Kind, StringComparison.Ordinal))
                .Where(d => job.Items.All(i => d.Items.Any(e => ItemIds.Same(i.Item.Id, e))))
                .Select(d => d.Number)
                .LastOrDefault()
            : null;

    /// <summary>Withdraws what a corrected record no longer justifies, and names what somebody has to look at.</summary>
    /// <param name="standing">Numbers that the record gave now, or that it gave before and still gives.</param>
    public async Task<IReadOnlyList<string>> TakeBackAsync(IReadOnlySet<string> standing)
    {
        var remarks = new List<string>();
        foreach (var (visit, version) in _versions)
        {
            foreach (
                var old in EarlierVersions
                    .Of(register, visit, version.Number)
                    .OfOthers.Where(o =>
                        !standing.Contains(o.Number) && o.Items.Any(i => visit.Everything.Any(e => ItemIds.Same(e.Item.Id, i)))
                    )
            )
            {
                if (_content.Read(old) is not { } document || !await _content.StillHoldsAsync(document, visit, version.Photos))
                    remarks.Add(TakeBack(old, visit));
            }
        }
        return remarks;
    }

    private string TakeBack(DocumentStatus old, DeterminedVisit visit)
    {
        var about = $"{old.Number} ({old.Kind} of {string.Join(", ", old.Items)})";
        if (!IsWithin(old, visit))
            return $"{about} also names items that this record does not; it stays current. Read it again, and withdraw it if it "
                + $"no longer holds: examdocs register withdraw {old.Number}.";
        if (!MustBeBorneOut.Contains(old.Kind, StringComparer.Ordinal))
            return $"{about} was given by an earlier version of the record; it stays current. Withdraw it if it no longer holds: "
                + $"examdocs register withdraw {old.Number}.";
        var words = reason ?? Corrected;
        register.Withdraw(old.Number, $"{words}, and no longer bears it out");
        return $"{about} is withdrawn: {words}, and no longer bears it out.";
    }

    private static bool IsWithin(DocumentStatus old, DeterminedVisit visit) =>
        old.Items.All(i => visit.Everything.Any(e => ItemIds.Same(e.Item.Id, i)));

    public ValueTask DisposeAsync() => _content.DisposeAsync();
}
