using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Certificate.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Templates.Certificate;

/// <summary>The examiner's statement that an item may go back into service after a renewal.</summary>
public sealed class CertificateModel
{
    private static CertificatePhrases Words => CertificatePhrases.Current;

    /// <param name="identity">Of kind certificate.</param>
    /// <param name="visit">The visit the item belongs to.</param>
    /// <param name="parent">The item that was renewed; fit or fit-until.</param>
    /// <param name="renewals">The renewals it speaks of, at least one.</param>
    /// <param name="fittedParts">The parts now fitted, each fit or fit-until.</param>
    /// <exception cref="ArgumentException">There is no renewal, or an item or part may not be reported as fit.</exception>
    public CertificateModel(
        DocumentIdentity identity,
        DeterminedVisit visit,
        DeterminedItem parent,
        IReadOnlyList<Renewal> renewals,
        IReadOnlyList<DeterminedItem> fittedParts
    )
    {
        if (renewals.Count == 0)
            throw new ArgumentException("a certificate for reissue needs a renewal", nameof(renewals));
        if (fittedParts.Prepend(parent).FirstOrDefault(i => !IsFit(i)) is { } refused)
            throw new ArgumentException($"{refused.Item.Id} is not fit to be certified", nameof(parent));
        (Identity, Determined, Parent, FittedParts, Renewals) = (identity, visit, parent, fittedParts, renewals);
        Regime = Phrases.Regime(parent.Regime);
        Examiner = visit.Person(parent.Examination?.Examiner);
        Signatory = visit.Person(parent.Examination?.AuthenticatedBy) ?? Examiner;
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public DeterminedItem Parent { get; }

    public IReadOnlyList<DeterminedItem> FittedParts { get; }

    public IReadOnlyList<Renewal> Renewals { get; }

    public RegimeWording Regime { get; }

    public Person? Examiner { get; }

    public Person? Signatory { get; }

    public Visit Visit => Determined.Record.Visit;

    /// <summary>Who makes the statement: the person, and the firm where not self-employed.</summary>
    public Party Issuer =>
        new()
        {
            Name = Printed.Join(", ", Signatory?.Name, Signatory?.SelfEmployed is true ? null : Signatory?.Employer?.Name)
                is { Length: > 0 } name
                ? name
                : null,
            Address = Signatory?.Address,
        };

    public string Function => Examiner is not null && Signatory == Examiner ? Words.Function : Words.OtherFunction;

    public string Statement =>
        Printed.Join(
            " ",
            Words.Conforms(Printed.Text(Parent.Item.Id), Parent.ExaminedOn, Printed.Text(Examiner?.Name)),
            Parent.Until is null ? null : Words.ConformsUntil(Parent.Until)
        );

    /// <summary>Everything it is said to conform to, complete: the maker's documents, the law, the marks read.</summary>
    public IReadOnlyList<string> Requirements =>
        [
            Words.ExaminedUnder(Regime.Law),
            .. All.Select(i => Printed.List([ByMaker(i), .. i.Item.Standards.Count > 0 ? [Marks(i)] : Array.Empty<string>()])),
        ];

    public IReadOnlyList<string> Limits
    {
        get
        {
            var limits = new List<string> { Words.LimitState(Parent.ExaminedOn), Words.LimitNext(Parent.NextExaminationBy) };
            if (Parent.Until is { } until)
                limits.Add(Words.LimitUntil(until));
            if (Parent.EndOfService is { } end)
                limits.Add(Words.LimitEnd(end));
            limits.Add(Words.LimitEvents);
            return limits;
        }
    }

    /// <summary>The maker's document under which this renewal was made: that of the part fitted, else of the item.</summary>
    public string DocumentOf(Renewal renewal)
    {
        var part = FittedParts.FirstOrDefault(p => string.Equals(p.Item.Id, renewal.FittedPart, StringComparison.Ordinal));
        return Document(part ?? Parent);
    }

    public string Name(string? person) => RenewalLine.Name(person, Determined);

    private IEnumerable<DeterminedItem> All => FittedParts.Prepend(Parent);

    private static bool IsFit(DeterminedItem item) => item.MayBeReported && item.Outcome is (Outcome.Fit or Outcome.FitUntil);

    private static string ByMaker(DeterminedItem item) => Words.ByMaker(Printed.Text(item.Item.Id), Document(item));

    private static string Marks(DeterminedItem item) => Words.Standards(string.Join(", ", item.Item.Standards));

    private static string Document(DeterminedItem item) => MakersDocuments.Of(item);
}
