using ExamDocs.Core.Findings;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Outputs;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Numbers, prints and publishes jobs one after the other; what the register has already is only put in place.</summary>
/// <param name="register">Where numbers come from.</param>
/// <param name="corrections">What the visits are known by in the register, and what their documents take the place of.</param>
/// <param name="folder">Where the documents go; null where the register alone keeps them.</param>
/// <param name="today">Day of issue.</param>
/// <param name="browser">One that is open already and stays open; null to start one when there is something to print.</param>
/// <param name="names">How files are named; null to leave them as they are.</param>
internal sealed class PrintRun(
    DocumentRegister register,
    Corrections corrections,
    string? folder,
    LocalDate today,
    Browser? browser = null,
    FileNamePattern? names = null
) : IAsyncDisposable
{
    private readonly NamedFiles? _files = folder is null ? null : new(register, folder, names);
    private readonly DocumentRenderer _renderer = new();
    private readonly HeldBack _heldBack = new();
    private readonly List<Issued> _documents = [];
    private NumberedPrint? _print;
    private Browser? _ownBrowser;

    public IReadOnlyList<Issued> Documents => _documents;

    /// <summary>Called after each job: it is issued, was issued before, or is held back. What it throws stops the run there.</summary>
    public Action? JobDone { get; set; }

    /// <inheritdoc cref="HeldBack.Unprintable"/>
    public IReadOnlyList<string> Unprintable => _heldBack.Unprintable;

    /// <inheritdoc cref="HeldBack.Remarks"/>
    public IReadOnlyList<string> Remarks => [.. _heldBack.Remarks, .. _files?.Remarks ?? []];

    /// <inheritdoc cref="HeldBack.Refused"/>
    public IReadOnlyList<Refusal> Refused => _heldBack.Refused;

    /// <returns>Why it stopped before the last job; null where it did not.</returns>
    public async Task<string?> RunAsync(IReadOnlyList<DocumentJob> jobs, CancellationToken cancellation)
    {
        try
        {
            foreach (var job in jobs)
            {
                await IssueWithCopyAsync(job, cancellation);
                JobDone?.Invoke();
            }
            return null;
        }
        // A register that no longer holds what it should is not a reason to run again, and stops the whole command.
        catch (Exception e) when (RunFailure.Is(e) && e is not InvalidDataException)
        {
            return RunFailure.Sentence(e);
        }
    }

    /// <summary>Prints a page that is no document: without a number, and not recorded.</summary>
    /// <param name="compose">Makes the page.</param>
    /// <returns>Null where not all of it can be printed.</returns>
    public async Task<byte[]?> PrintUnrecordedAsync(Func<DocumentRenderer, Task<string>> compose, CancellationToken cancellation)
    {
        var html = await compose(_renderer);
        await using var pages = new UnnumberedPages(browser ?? (_ownBrowser ??= await Browser.StartAsync()));
        return (await pages.PrintAsync(html, cancellation)).Pages;
    }

    /// <summary>The bytes of a document, as issued.</summary>
    public byte[] Content(IssuedDocument document) => register.Content(document);

    private async Task IssueWithCopyAsync(DocumentJob asked, CancellationToken cancellation)
    {
        if (await IssueAsync(asked, cancellation) is not ({ } issued, var job))
            return;
        _documents.Add(issued with { Job = job });
        // What is held back has no copy: there is nothing that it could be a copy of.
        if (
            job.Copy is { } copy
            && await IssueAsync(LikeIt(copy(new CopiedReport(issued.Document.Number, issued.Document.Sha256)), job), cancellation)
                is ({ } copied, _)
        )
            _documents.Add(copied with { CopyOf = issued.Document.Number });
    }

    private static DocumentJob LikeIt(DocumentJob job, DocumentJob other) =>
        job with
        {
            Language = other.Language,
            Letterhead = other.Letterhead,
            Signer = other.Signer,
        };

    /// <returns>The document with the job that it was made by, which may be about fewer items than asked; no document where all of it is
    /// held back because not all of it can be printed.</returns>
    private async Task<(Issued? Issued, DocumentJob Job)> IssueAsync(DocumentJob job, CancellationToken cancellation)
    {
        var draft = await job.DraftAsync(_renderer);
        var key = job.Key(draft);
        if ((register.FindIssued(key) ?? await corrections.StandingAsync(job)) is { } before)
            return (Placed(before, job, issuedNow: false), job);
        if (_heldBack.HoldsReportOf(job) || (_heldBack.Fits(job) is false && !job.IsWarning))
            return (null, job);
        // No number is taken before there is something to print with.
        var open = browser ?? (_ownBrowser ??= await Browser.StartAsync());
        var glyphs = await GlyphFaultsAsync(draft, open, cancellation);
        if (glyphs.Count > 0 && !job.IsWarning)
            return await WithoutAsync(job, PrintRules.GlyphIsMissing, glyphs, cancellation);
        if (glyphs.Count > 0)
            _heldBack.Tell(job, PrintRules.GlyphIsMissing, glyphs);
        // A warning that lacks a letter is printed, and the letter is named once.
        _print ??= new NumberedPrint(register, corrections, folder, today, _renderer, _heldBack);
        var (issued, faults) = await _print.PrintAsync(job, key, open, isChecked: glyphs.Count == 0, cancellation);
        return issued is null
            ? await WithoutAsync(job, PrintRules.PrintIsFaithful, faults, cancellation)
            : (Placed(issued, job, issuedNow: true), job);
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
        return await IssueAsync(LikeIt(rest, job), cancellation);
    }

    private static async Task<IReadOnlyList<PrintFault>> GlyphFaultsAsync(string draft, Browser browser, CancellationToken cancellation) =>
        MissingGlyphs.MayOccurIn(draft)
            ? FaithfulPrint.Lacking(draft, MissingGlyphs.In(draft, await browser.PrintAsync(draft, cancellation)))
            : [];

    public async ValueTask DisposeAsync()
    {
        if (_ownBrowser is not null)
            await _ownBrowser.DisposeAsync();
        await _renderer.DisposeAsync();
    }
}
