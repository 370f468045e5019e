using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// A run over a register, shared by every job that issues documents. It opens the register, finishes or voids what an interrupted run
/// left, decides and stores the visits, and then corrects and prints one visit after the other.
/// </summary>
internal sealed class RegisteredRun : IAsyncDisposable
{
    private readonly LocalDate _today;
    private readonly KnownRules _rules;
    private readonly Corrections _corrections;
    private readonly List<string> _remarks;
    private CheckedInput[] _inputs = [];

    private RegisteredRun(
        DocumentRegister register,
        string? folder,
        LocalDate today,
        KnownRules rules,
        string? reason,
        IPagePrinter? browser,
        FileNamePattern? names
    )
    {
        (Register, _today, _rules, _corrections) = (register, today, rules, new Corrections(register, reason, rules));
        register.KeepContentUntil(ContentRetention.Of(register, rules));
        Prints = new PrintRun(register, _corrections, folder, today, browser, names);
        _remarks = [.. register.Recover()];
    }

    public DocumentRegister Register { get; }

    public PrintRun Prints { get; }

    /// <summary>The inputs as checked, in the order read.</summary>
    public IReadOnlyList<CheckedInput> Inputs => _inputs;

    /// <summary>Sentences for the user that hold back no document.</summary>
    public IReadOnlyList<string> Remarks => [.. _remarks, .. Prints.Remarks];

    /// <param name="place">The register; made where it is missing.</param>
    /// <param name="folder">Where the documents go; null where the register alone keeps them.</param>
    /// <param name="today">Day of issue.</param>
    /// <param name="rules">The categories and regimes that records can name.</param>
    /// <param name="reason">Why an earlier version of the record is corrected; null to say only that it was.</param>
    /// <param name="browser">One that is open already and stays open; null to start one when there is something to print.</param>
    /// <param name="names">How files are named; null to leave them as they are.</param>
    /// <exception cref="RegisterRefusedException">The file is not a register, or one of a later version.</exception>
    /// <exception cref="IOException">The register cannot be written.</exception>
    public static RegisteredRun Open(
        string place,
        string? folder,
        LocalDate today,
        KnownRules rules,
        string? reason = null,
        IPagePrinter? browser = null,
        FileNamePattern? names = null
    )
    {
        var register = DocumentRegister.Open(place, today);
        try
        {
            return new RegisteredRun(register, folder, today, rules, reason, browser, names);
        }
        catch
        {
            register.Dispose();
            throw;
        }
    }

    /// <summary>
    /// Decides what was read, stores it, and prints the visits in the order of their days, because a later visit names the documents
    /// of the earlier ones.
    /// </summary>
    /// <param name="read">Readable inputs.</param>
    /// <param name="compose">The jobs of a visit, without what a later visit has ended.</param>
    /// <param name="expected">How many jobs a visit is expected to have.</param>
    /// <param name="steps">Told what is done.</param>
    /// <param name="cancellation">Stops it between two documents.</param>
    /// <returns>Why it stopped before the last document; null where it did not.</returns>
    public async Task<string?> IssueAsync(
        IReadOnlyList<ReadVisits> read,
        Func<CheckedInput, EndedLines, IReadOnlyList<DocumentJob>> compose,
        Func<CheckedInput, int> expected,
        RunSteps steps,
        CancellationToken cancellation
    )
    {
        steps.Begin(RunStage.Checking);
        var decided = Remember(read);
        var before = _inputs.Select(expected).ToList();
        steps.Begin(RunStage.Printing, before.Sum());
        Prints.JobDone = () => steps.Next(Prints.Refused.Count);
        foreach (var n in decided.InOrder())
        {
            var jobs = compose(Name(decided, n), LaterFindings.Ended(Register, decided.Numbers[n].Visit, _inputs[n].Visit!));
            steps.Expect(jobs.Count - before[n]);
            if (await PrintAsync(jobs, cancellation) is { } failure)
                return failure;
        }
        steps.Begin(RunStage.Writing);
        return null;
    }

    /// <summary>Decides what was read, and stores it.</summary>
    /// <param name="read">Readable inputs.</param>
    public DecideRun Remember(IReadOnlyList<ReadVisits> read)
    {
        var decided = DecideRun.Remember(read, Register, _today, _rules);
        _inputs = [.. decided.Inputs];
        _remarks.AddRange(decided.Remarks(Register));
        return decided;
    }

    /// <summary>Decides again what is stored already, in the same way.</summary>
    /// <inheritdoc cref="DecideRun.Again"/>
    public DecideRun Again(IReadOnlyList<ReadVisits> read, IReadOnlyList<int> numbers, int seen)
    {
        var decided = DecideRun.Again(read, Register, _today, _rules, numbers, seen);
        _inputs = [.. decided.Inputs];
        return decided;
    }

    /// <summary>A visit that is about to be issued, naming the documents of the visits before it, which are out.</summary>
    /// <param name="decided">The visits of the run.</param>
    /// <param name="place">Its place among the inputs.</param>
    public CheckedInput Name(DecideRun decided, int place)
    {
        _inputs[place] = decided.Naming(Register, place);
        _corrections.KnownUpTo = decided.Seen;
        _corrections.Take(_inputs[place].Visit!, decided.Numbers[place].Visit, _inputs[place].Photos.Of);
        return _inputs[place];
    }

    /// <summary>A run that is stopped finishes the documents in hand, so that no number is void for it.</summary>
    public async Task<string?> PrintAsync(IReadOnlyList<DocumentJob> jobs, CancellationToken cancellation)
    {
        try
        {
            cancellation.ThrowIfCancellationRequested();
            return await Prints.RunAsync(jobs, cancellation);
        }
        catch (OperationCanceledException)
        {
            return RunFailure.ByUser;
        }
    }

    /// <summary>Takes back documents that the corrected records no longer justify.</summary>
    public Task TakeBackAsync() => TakeBackAsync(Prints.Documents.Select(d => d.Document.Number));

    /// <inheritdoc cref="TakeBackAsync()"/>
    /// <param name="standing">Numbers of the documents that the records gave now, or before and still give.</param>
    public async Task TakeBackAsync(IEnumerable<string> standing) =>
        _remarks.AddRange(await _corrections.TakeBackAsync(standing.ToHashSet(StringComparer.Ordinal)));

    public async ValueTask DisposeAsync()
    {
        await Prints.DisposeAsync();
        await _corrections.DisposeAsync();
        Register.Dispose();
    }
}
