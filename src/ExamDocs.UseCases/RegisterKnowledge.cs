using ExamDocs.Core.Determination;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Register;

namespace ExamDocs.UseCases;

/// <summary>The visits that a register remembers, as they are known to a record that is decided.</summary>
/// <param name="register">The register.</param>
/// <param name="upTo">The last visit that counts; null for all.</param>
/// <param name="origin">The register in whose numbers that is; null for this one.</param>
internal sealed class RegisterKnowledge(DocumentRegister register, int? upTo = null, string? origin = null) : IKnownVisits
{
    private readonly RememberedRecords _records = new(register);
    private readonly Dictionary<int, KnownVisit> _visits = [];

    public RegisterAsked? Asked { get; } = new(register.Identity, register.KeptSince);

    public IReadOnlyList<KnownVisit> Touching(VisitToDecide visit) =>
    [
        .. register.Visits.Touching(visit.Record, upTo, origin)
            .Where(v => !string.Equals(v.Visit.Sha256, visit.Key, StringComparison.Ordinal)).Select(Known),
    ];

    private KnownVisit Known(TouchingVisit stored)
    {
        var number = stored.Visit.Visit;
        if (!_visits.TryGetValue(number, out var known))
            _visits[number] = known = new KnownVisit(number, _records.Of(number), [.. stored.Outcomes.Select(o => Known(number, o))]);
        return known;
    }

    private KnownOutcome Known(int visit, RememberedOutcome o) =>
        new(o.Item, OutcomeWords.Find(o.Outcome) ?? throw new InvalidDataException(FormattableString.Invariant($"The register has an outcome '{o.Outcome}' of visit {visit}, which is none.")), o.Codes)
        {
            ExaminedOn = o.ExaminedOn, Until = o.Until, NextBy = o.NextBy, Parts = o.Parts, NeverReleasable = o.NeverReleasable, Documents = DocumentsOf(visit, o.Item),
        };

    /// <summary>The label that hangs on the item first, then the notice, then the report; what is current before what is not.</summary>
    private IReadOnlyList<KnownDocument> DocumentsOf(int visit, string? item) => item is null ? [] :
    [
        .. register.About(item, visit).Where(d => d is { State: DocumentState.Issued, CopyOf: null })
            .OrderByDescending(d => d.IsCurrent).ThenBy(d => d.Kind switch { "quarantine-label" => 0, "notice" => 1, "report" => 2, _ => 3 })
            .ThenByDescending(d => d.Number, StringComparer.Ordinal).Select(d => new KnownDocument(d.Number, d.Kind)),
    ];
}
