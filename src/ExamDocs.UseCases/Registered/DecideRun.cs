using System.Security.Cryptography;
using ExamDocs.Core;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>The visits of one run: decided together with what a register knows, and stored there together.</summary>
internal sealed class DecideRun
{
    /// <summary>Most attempts: where another run has stored visits meanwhile, everything is decided again.</summary>
    private const int Attempts = 20;

    private readonly IReadOnlyList<ReadVisits> _read;
    private readonly IReadOnlyList<VisitToDecide> _visits;
    private readonly LocalDate _asOf;
    private readonly KnownRules? _rules;
    private IReadOnlyList<DecidedVisit> _decided = [];
    private int _seen;

    private DecideRun(IReadOnlyList<ReadVisits> read, LocalDate asOf, KnownRules? rules)
    {
        (_read, _asOf, _rules) = (read, asOf, rules);
        _visits = [.. read.Where(r => r.Unreadable is null).Select(r => ToDecide(r.Read.Record!, r.Read.Findings))];
    }

    /// <summary>The inputs as checked, in the order read.</summary>
    public IReadOnlyList<CheckedInput> Inputs { get; private set; } = [];

    /// <summary>Numbers of the readable visits in the register, in the order read; empty where they are not stored.</summary>
    public IReadOnlyList<(int Visit, bool IsNew)> Numbers { get; private set; } = [];

    /// <summary>
    /// A visit decided once more in the same way, now that documents of the visits before it are issued, so that its own can name them.
    /// </summary>
    /// <param name="register">Where it is stored.</param>
    /// <param name="place">Its place among the inputs.</param>
    public CheckedInput Naming(DocumentRegister register, int place)
    {
        var visit = _visits[place];
        var known = new RegisterKnowledge(register, _seen) { NamedBefore = PlaceOf(place) };
        return _read[place].Checked(DetermineVisits.Of([visit], known, _asOf, _rules)[0].Visit);
    }

    /// <summary>Places of the inputs in the order in which their documents are issued: by their days.</summary>
    public IEnumerable<int> InOrder() => Enumerable.Range(0, _visits.Count).OrderBy(PlaceOf);

    private (LocalDate Day, int LessWithdrawn, int Number) PlaceOf(int place) =>
        PlaceInTime.Of(
            _visits[place].Record.Visit.ExaminedOn,
            KnownOutcomes.Of(_decided[place].Visit).Select(o => (o.Outcome.Word(), o.Codes)),
            Numbers[place].Visit
        );

    /// <summary>The decided visits, in the order read; unreadable ones left out.</summary>
    public IReadOnlyList<DecidedVisit> Decided => _decided;

    /// <summary>Decides and stores nothing.</summary>
    /// <param name="read">What was read.</param>
    /// <param name="register">The register to ask; null for none.</param>
    /// <param name="asOf">The day on which they are determined.</param>
    /// <param name="rules">The categories and regimes they can name.</param>
    public static IReadOnlyList<CheckedInput> Check(
        IReadOnlyList<ReadVisits> read,
        DocumentRegister? register,
        LocalDate asOf,
        KnownRules? rules
    )
    {
        var run = new DecideRun(read, asOf, rules);
        run.Decide(register is null ? null : new RegisterKnowledge(register));
        return run.Inputs;
    }

    /// <summary>Decides, and stores in one transaction the outcomes of the visits and what they end.</summary>
    /// <exception cref="IOException">Other runs stored visits during every attempt.</exception>
    public static DecideRun Remember(IReadOnlyList<ReadVisits> read, DocumentRegister register, LocalDate asOf, KnownRules? rules)
    {
        var run = new DecideRun(read, asOf, rules);
        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            var knownUpTo = register.Visits.Latest;
            run.Decide(new RegisterKnowledge(register));
            if (
                register.Visits.Remember([.. run._decided.Select(d => RememberVisit.Of(d, n => n <= knownUpTo ? n : null))], knownUpTo) is
                { } numbers
            )
                return run.Numbered(register, numbers, knownUpTo);
        }
        throw new IOException("the register is in use by other runs; try again when these are done");
    }

    /// <summary>
    /// Decides visits that are stored already with what was known then, so that it comes out as it did, whatever was stored since; stores
    /// nothing.
    /// </summary>
    /// <param name="read">What was read.</param>
    /// <param name="register">Where they are stored.</param>
    /// <param name="asOf">The day on which they are determined.</param>
    /// <param name="rules">The categories and regimes they can name.</param>
    /// <param name="numbers">Their numbers in the register, in the order read.</param>
    /// <param name="seen">The last visit that could be known when they were decided.</param>
    public static DecideRun Again(
        IReadOnlyList<ReadVisits> read,
        DocumentRegister register,
        LocalDate asOf,
        KnownRules? rules,
        IReadOnlyList<int> numbers,
        int seen
    )
    {
        var run = new DecideRun(read, asOf, rules) { Numbers = [.. numbers.Select(n => (n, false))], _seen = seen };
        run.Decide(new RegisterKnowledge(register, seen));
        return run;
    }

    /// <summary>Whether the register has these visits with these records, decided as they are here.</summary>
    /// <exception cref="Register.Model.RegisterAlteredException">It is not as its log has it.</exception>
    public bool IsAsStored(DocumentRegister register) =>
        register
            .Visits.AsLogged(new RememberedRecords(register).Read)
            .AreAs([.. Numbers.Zip(_decided, (n, d) => (n.Visit, RememberVisit.Of(d.Visit)))]);

    /// <summary>The last visit that could be known when they were decided; 0 where they are not stored.</summary>
    public int Seen => _seen;

    /// <summary>Reference, employer and SHA-256 of each readable visit, in the order read.</summary>
    public static IEnumerable<(string? Reference, string? Employer, string Sha256)> Versions(IReadOnlyList<ReadVisits> read) =>
        read.Where(r => r.Unreadable is null)
            .Select(r => (r.Read.Record!.Visit, ToDecide(r.Read.Record!, r.Read.Findings).Key))
            .Select(v => (v.Visit.Reference, v.Visit.Employer?.Name, v.Key));

    /// <summary>
    /// What somebody has to do now because of these visits: labels to take off, items to take out of use. One sentence each.
    /// </summary>
    /// <param name="register">Where they are stored.</param>
    public IReadOnlyList<string> Remarks(DocumentRegister register) =>
        [.. EndedDocuments.Of(this, register), .. LateWithdrawals.Of(this), .. EarlierVersions.Of(this, register)];

    /// <summary>
    /// Stores once more which lines the visits end: one of them may end lines of another visit of the run, and that one's number is known
    /// only now.
    /// </summary>
    private DecideRun Numbered(DocumentRegister register, IReadOnlyList<(int Visit, bool IsNew)> numbers, int knownUpTo)
    {
        (Numbers, _seen) = (numbers, numbers.Select(n => n.Visit).Append(knownUpTo).Max());
        if (_decided.Count > 1)
            register.Visits.Remember([
                .. _decided.Select(d => RememberVisit.Of(d, n => DetermineVisits.PlaceInRun(n) is { } place ? numbers[place].Visit : null)),
            ]);
        return this;
    }

    private void Decide(IKnownVisits? known)
    {
        _decided = DetermineVisits.Of(_visits, known, _asOf, _rules);
        var decided = new Queue<DecidedVisit>(_decided);
        Inputs = [.. _read.Select(r => r.Checked(r.Unreadable is null ? decided.Dequeue().Visit : null))];
    }

    internal static VisitToDecide ToDecide(Core.Records.ExaminationRecord record, IReadOnlyList<Core.Findings.Finding> findings) =>
        new(record, findings, Convert.ToHexStringLower(SHA256.HashData(EmbeddedRecord.Write(record, findings))));
}
