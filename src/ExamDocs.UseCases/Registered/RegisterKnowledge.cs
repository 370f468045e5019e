using ExamDocs.Core;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// The order of visits: by their days. On one day, those that withdraw the most by themselves come first, so that the others can name
/// their documents.
/// </summary>
internal static class PlaceInTime
{
    public static (LocalDate Day, int LessWithdrawn, int Number) Of(
        LocalDate? day,
        IEnumerable<(string Outcome, IReadOnlyList<string> Codes)> outcomes,
        int number
    ) =>
        (
            day ?? LocalDate.MinIsoValue,
            -outcomes.Count(o =>
                string.Equals(o.Outcome, Outcome.Withdraw.Word(), StringComparison.Ordinal)
                && o.Codes.Any(c => c is ['W', ..] and not "W10")
            ),
            number
        );
}

/// <summary>The visits of a register, in the form in which they are known when a record is decided.</summary>
/// <param name="register">The register.</param>
/// <param name="upTo">The last visit that counts; null for all.</param>
/// <param name="origin">The register whose numbering <paramref name="upTo"/> uses; null for this one.</param>
internal sealed class RegisterKnowledge(DocumentRegister register, int? upTo = null, string? origin = null) : IKnownVisits
{
    private readonly Dictionary<int, KnownVisit> _visits = [];

    /// <summary>The records of its visits; shared with whoever reads them too.</summary>
    public RememberedRecords Records { get; init; } = new(register);

    /// <summary>The documents of its visits; shared with whoever reads them too.</summary>
    public DocumentsOnRecord Documents { get; init; } = new(register);

    /// <summary>True to use what is stored without comparing it with the log: a check of the register does that itself.</summary>
    public bool AsStored { get; init; }

    private VisitsAsLogged Logged => field ??= register.Visits.AsLogged(Records.Read);

    /// <summary>
    /// The place of the visit under check: only documents of visits before it are named. Later visits may still issue documents, and the
    /// same record must print the same again. Null to name all.
    /// </summary>
    public (LocalDate Day, int LessWithdrawn, int Number)? NamedBefore { get; init; }

    public RegisterConsulted? Asked { get; } = new(register.Identity, register.KeptSince);

    /// <exception cref="RegisterAlteredException">One of them differs from the log.</exception>
    public IReadOnlyList<KnownVisit> Touching(VisitToDecide visit) =>
        [
            .. (AsStored ? register.Visits.Touching(visit.Record, upTo, origin) : Logged.Touching(visit.Record, upTo, origin))
                .Where(v => !string.Equals(v.Visit.Sha256, visit.Key, StringComparison.Ordinal))
                .Select(Known),
        ];

    /// <summary>A visit that was compared with the log already.</summary>
    public KnownVisit Known(TouchingVisit stored)
    {
        var number = stored.Visit.Visit;
        if (!_visits.TryGetValue(number, out var known))
            _visits[number] = known = new KnownVisit(number, Records.Of(number), [.. stored.Outcomes.Select(o => Known(stored, o))])
            {
                Origin = stored.Visit.Origin,
            };
        return known;
    }

    private KnownOutcome Known(TouchingVisit stored, RememberedOutcome o) =>
        new(
            o.Item,
            OutcomeWords.Find(o.Outcome)
                ?? throw new InvalidDataException(
                    FormattableString.Invariant($"The register has an unknown outcome '{o.Outcome}' of visit {stored.Visit.Visit}.")
                ),
            o.Codes
        )
        {
            ExaminedOn = o.ExaminedOn,
            Until = o.Until,
            NextBy = o.NextBy,
            Parts = o.Parts,
            NeverReleasable = o.NeverReleasable,
            Documents = IsNamed(stored) ? DocumentsOf(stored.Visit.Visit, o.Item) : [],
        };

    private bool IsNamed(TouchingVisit stored) =>
        NamedBefore is not { } place
        || PlaceInTime.Of(stored.Visit.ExaminedOn, stored.Outcomes.Select(o => (o.Outcome, o.Codes)), stored.Visit.Visit).CompareTo(place)
            < 0;

    /// <summary>The documents about an item: current ones first; then the label, which hangs on it, the notice, the report.</summary>
    private IReadOnlyList<KnownDocument> DocumentsOf(int visit, string? item) =>
        item is null
            ? []
            :
            [
                .. Documents
                    .About(item, visit)
                    .Where(d => d is { State: DocumentState.Issued, CopyOf: null })
                    .OrderByDescending(d => d.IsCurrent)
                    .ThenBy(d =>
                        d.Kind switch
                        {
                            "quarantine-label" => 0,
                            "notice" => 1,
                            "report" => 2,
                            _ => 3,
                        }
                    )
                    .ThenByDescending(d => d.Number, StringComparer.Ordinal)
                    .Select(d => new KnownDocument(d.Number, d.Kind)),
            ];
}
