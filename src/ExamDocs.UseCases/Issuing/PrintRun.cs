using System.Runtime.ExceptionServices;
using ExamDocs.Core.Findings;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Outputs;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// Numbers, prints and publishes jobs; what the register has already is only put in place. A schedule of which an item cannot be printed
/// whole is printed again without it.
/// </summary>
internal sealed class PrintRun : IAsyncDisposable
{
    private readonly DocumentRegister _register;
    private readonly IPagePrinter? _browser;
    private readonly NamedFiles? _files;
    private readonly DocumentRenderer _renderer = new();
    private readonly HeldBack _heldBack = new();
    private readonly List<Issued> _documents = [];
    private readonly PrintQueue _queue;
    private Browser? _ownBrowser;

    /// <param name="register">Where numbers come from.</param>
    /// <param name="corrections">What the visits are known by in the register, and what their documents take the place of.</param>
    /// <param name="folder">Where the documents go; null where the register alone keeps them.</param>
    /// <param name="today">Day of issue.</param>
    /// <param name="browser">One that is open already and stays open; null to start one when there is something to print.</param>
    /// <param name="names">How files are named; null to leave them as they are.</param>
    public PrintRun(
        DocumentRegister register,
        Corrections corrections,
        string? folder,
        LocalDate today,
        IPagePrinter? browser = null,
        FileNamePattern? names = null
    )
    {
        (_register, _browser, _files) = (register, browser, folder is null ? null : new(register, folder, names));
        _queue = new PrintQueue(new PrintLookup(register, corrections, _renderer, _heldBack, BrowserAsync), async () =>
            new NumberedPrint(register, corrections, folder, today, _renderer, await BrowserAsync())
        );
    }

    public IReadOnlyList<Issued> Documents => _documents;

    /// <summary>Called after each job: it is issued, was issued before, or is held back.</summary>
    public Action? JobDone { get; set; }

    /// <inheritdoc cref="HeldBack.Unprintable"/>
    public IReadOnlyList<string> Unprintable => _heldBack.Unprintable;

    /// <inheritdoc cref="HeldBack.Remarks"/>
    public IReadOnlyList<string> Remarks => [.. _heldBack.Remarks, .. _files?.Remarks ?? []];

    /// <inheritdoc cref="HeldBack.Refused"/>
    public IReadOnlyList<Refusal> Refused => _heldBack.Refused;

    /// <summary>What stopped it before the last job; null where nothing did.</summary>
    public Exception? StoppedBy { get; private set; }

    /// <inheritdoc cref="HeldBack.Know"/>
    public void Know(IEnumerable<Refusal> elsewhere) => _heldBack.Know(elsewhere);

    /// <returns>Why it stopped before the last job; null where it did not.</returns>
    /// <exception cref="OperationCanceledException">It was cancelled; what was in hand is issued.</exception>
    public async Task<string?> RunAsync(IReadOnlyList<DocumentJob> jobs, CancellationToken cancellation)
    {
        try
        {
            await _queue.RunAsync(jobs, SettleAsync, cancellation);
            return null;
        }
        // A register that no longer holds what it should is not a reason to run again, and stops the whole command.
        catch (Exception e) when (RunFailure.Is(e) && e is not InvalidDataException)
        {
            StoppedBy = e;
            return RunFailure.Sentence(e);
        }
    }

    /// <summary>Prints a page that is no document: without a number, and not recorded.</summary>
    /// <param name="compose">Makes the page.</param>
    /// <returns>Null where not all of it can be printed.</returns>
    public async Task<byte[]?> PrintUnrecordedAsync(Func<DocumentRenderer, Task<string>> compose, CancellationToken cancellation)
    {
        var html = await compose(_renderer);
        await using var pages = new UnnumberedPages(await BrowserAsync());
        return (await pages.PrintAsync(html, cancellation)).Pages;
    }

    /// <summary>The bytes of a document, as issued.</summary>
    public byte[] Content(IssuedDocument document) => _register.Content(document);

    private async Task SettleAsync(PrintInHand print, NumberedOutcome? outcome, CancellationToken cancellation)
    {
        await AddAsync(print, outcome, cancellation);
        JobDone?.Invoke();
    }

    /// <summary>Adds what came of a job, with the copy that has to go with it.</summary>
    private async Task AddAsync(PrintInHand print, NumberedOutcome? outcome, CancellationToken cancellation)
    {
        if (await SettledAsync(print, outcome, cancellation) is not ({ } issued, var job))
            return;
        _documents.Add(issued with { Job = job });
        // What is held back has no copy: there is nothing that it could be a copy of.
        if (
            job.Copy is { } copy
            && await IssueAsync(copy(new CopiedReport(issued.Document.Number, issued.Document.Sha256)).Like(job), cancellation)
                is ({ } copied, _)
        )
            _documents.Add(copied with { CopyOf = issued.Document.Number });
    }

    /// <returns>The document with the job that it was made by, which may be about fewer items than asked; no document where all of it is
    /// held back because not all of it can be printed.</returns>
    private Task<(Issued? Issued, DocumentJob Job)> SettledAsync(
        PrintInHand print,
        NumberedOutcome? outcome,
        CancellationToken cancellation
    ) => outcome is null ? WithoutPrintAsync(print, cancellation) : AfterPrintAsync(print, outcome, cancellation);

    private Task<(Issued? Issued, DocumentJob Job)> WithoutPrintAsync(PrintInHand print, CancellationToken cancellation) =>
        print.State switch
        {
            PrintState.Issued => Task.FromResult<(Issued?, DocumentJob)>((Placed(print.Before!, print.Job, issuedNow: false), print.Job)),
            PrintState.SaidByAnother => IssueAsync(print.Job, cancellation),
            PrintState.LacksGlyphs => WithoutAsync(print.Job, PrintRules.GlyphIsMissing, print.MissingGlyphs, cancellation),
            _ => Task.FromResult<(Issued?, DocumentJob)>((null, print.Job)),
        };

    private async Task<(Issued? Issued, DocumentJob Job)> AfterPrintAsync(
        PrintInHand print,
        NumberedOutcome outcome,
        CancellationToken cancellation
    )
    {
        if (outcome.Failure is { } failure)
        {
            _heldBack.TellUnprinted(print.Job, failure.Message);
            return (null, print.Job);
        }
        if (outcome.Document is not { } document)
            return await WithoutAsync(print.Job, PrintRules.PrintIsFaithful, outcome.Faults, cancellation);
        if (outcome.Faults.Count > 0)
            _heldBack.Tell(print.Job, PrintRules.PrintIsFaithful, outcome.Faults);
        _heldBack.TellOfSigner(print.Job);
        return (Placed(document, print.Job, issuedNow: true), print.Job);
    }

    private async Task<(Issued? Issued, DocumentJob Job)> IssueAsync(DocumentJob job, CancellationToken cancellation)
    {
        var (print, outcome) = await _queue.IssueAsync(job, cancellation);
        if (outcome?.Stop is { } stop)
            ExceptionDispatchInfo.Throw(stop);
        return await SettledAsync(print, outcome, cancellation);
    }

    private Issued Placed(IssuedDocument document, DocumentJob job, bool issuedNow) =>
        new(document, issuedNow) { FileName = _files?.Put(document, job) ?? document.FileName, Job = job };

    /// <summary>
    /// A schedule is printed again without the items that cannot be printed whole. A fault that belongs to no item holds the whole
    /// schedule back.
    /// </summary>
    private async Task<(Issued? Issued, DocumentJob Job)> WithoutAsync(
        DocumentJob job,
        RuleInfo rule,
        IReadOnlyList<PrintFault> faults,
        CancellationToken cancellation
    )
    {
        if (ItemsAtFault.Of(job, faults) is not { } left || job.Without?.Invoke(left.LeftOut) is not { } rest)
        {
            _heldBack.Tell(job, rule, faults);
            return (null, job);
        }
        foreach (var (item, text) in left.Refused)
            _heldBack.TellOfOne(job, rule, item.Item.Id, text);
        return await IssueAsync(rest.Like(job), cancellation);
    }

    private async Task<IPagePrinter> BrowserAsync() => _browser ?? (_ownBrowser ??= await Browser.StartAsync());

    public async ValueTask DisposeAsync()
    {
        _queue.Dispose();
        if (_ownBrowser is not null)
            await _ownBrowser.DisposeAsync();
        await _renderer.DisposeAsync();
    }
}
