using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Templates;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>Numbers, prints and publishes jobs one after the other; what the register has already is only put in place.</summary>
internal sealed class Press(DocumentRegister register, string folder, LocalDate today) : IAsyncDisposable
{
    private static readonly string Version = typeof(Press).Assembly.GetName().Version!.ToString(3);

    private readonly DocumentRenderer _renderer = new();
    private readonly List<Issued> _documents = [];
    private readonly List<string> _unprintable = [];
    private readonly List<string> _remarks = [];
    private readonly List<Refusal> _refused = [];
    private Browser? _browser;

    public IReadOnlyList<Issued> Documents => _documents;

    /// <summary>Sentences about characters that no installed font has, and about what does not fit on its paper.</summary>
    public IReadOnlyList<string> Unprintable => _unprintable;

    /// <summary>Sentences that warn and hold nothing back.</summary>
    public IReadOnlyList<string> Remarks => _remarks;

    /// <summary>Items whose document was held back for that.</summary>
    public IReadOnlyList<Refusal> Refused => _refused;

    /// <returns>Why it stopped before the last job; null where it did not.</returns>
    public async Task<string?> RunAsync(IReadOnlyList<DocumentJob> jobs, CancellationToken cancellation)
    {
        try
        {
            foreach (var job in jobs)
            {
                if (await IssueAsync(job, cancellation) is { } issued)
                    _documents.Add(issued);
            }
            return null;
        }
        catch (Exception e) when (e is PrintException or DocumentFileConflictException or IOException or UnauthorizedAccessException)
        {
            return e.Message;
        }
    }

    /// <summary>The bytes of a document, as issued.</summary>
    public byte[] Content(IssuedDocument document) => register.Content(document);

    /// <returns>Null where the document is held back because not all of it can be printed.</returns>
    private async Task<Issued?> IssueAsync(DocumentJob job, CancellationToken cancellation)
    {
        var draft = await job.DraftAsync(_renderer);
        var key = job.Key(draft);
        if (register.FindIssued(key) is { } before)
        {
            register.Restore(before, folder);
            return new Issued(before, IssuedNow: false);
        }
        if (FollowsRefused(job) || (Fits(job) is false && !job.IsWarning))
            return null;
        // No number is taken before there is something to print with.
        _browser ??= await Browser.StartAsync();
        if (MissingGlyphs.MayOccurIn(draft) && await LacksGlyphsAsync(job, draft, _browser, cancellation) && !job.IsWarning)
            return null;
        return new Issued(await PrintAsync(job, key, _browser, cancellation), IssuedNow: true);
    }

    // A label that says when to examine again says that the item was reported as fit.
    private bool FollowsRefused(DocumentJob job) => job.Type == DocumentTypes.DueLabel
        && job.Items.Any(i => _refused.Exists(r => string.Equals(r.Item, i.Item.Id, StringComparison.Ordinal)));

    private bool Fits(DocumentJob job)
    {
        var shortfalls = job.Shortfalls();
        foreach (var (rule, text) in shortfalls)
        {
            var isError = rule.Severity is Severity.Error;
            var consequence = !isError ? "" : job.IsWarning ? "; it is printed cut short, for the danger's sake" : "; it is held back";
            (isError ? _unprintable : _remarks).Add($"{rule.Code}: {job.Type.Kind} of {Names(job)}: {text}{consequence}. Hint: {rule.Hint}");
        }
        string[] errors = [.. shortfalls.Where(s => s.Rule.Severity is Severity.Error).Select(s => s.Rule.Code).Distinct(StringComparer.Ordinal)];
        if (errors.Length > 0 && !job.IsWarning)
            _refused.AddRange(job.Items.Select(i => new Refusal(i.Item.Id ?? "", errors, "next-examination label")));
        return errors.Length == 0;
    }

    private static string Names(DocumentJob job) =>
        $"{string.Join(", ", job.Items.Take(3).Select(i => i.Item.Id))}{(job.Items.Count > 3 ? " and others" : "")}";

    private async Task<bool> LacksGlyphsAsync(DocumentJob job, string draft, Browser browser, CancellationToken cancellation)
    {
        var missing = MissingGlyphs.In(draft, await browser.PrintAsync(draft, cancellation));
        if (missing.Count == 0)
            return false;
        if (!job.IsWarning)
            _refused.AddRange(job.Items.Select(i => new Refusal(i.Item.Id ?? "", [PrintRules.GlyphIsMissing.Code], job.Type == DocumentTypes.DueLabel ? "next-examination label" : "report or certificate")));
        _unprintable.Add($"{PrintRules.GlyphIsMissing.Code}: {job.Type.Kind} of {Names(job)}: "
            + $"no installed font has {MissingGlyphs.Name(missing)}; {(job.IsWarning ? "it is printed without, for the danger's sake" : "it is held back")}. Hint: {PrintRules.GlyphIsMissing.Hint}");
        return true;
    }

    private async Task<IssuedDocument> PrintAsync(DocumentJob job, string key, Browser browser, CancellationToken cancellation)
    {
        var ids = job.Items.Select(i => i.Item.Id ?? "").ToList();
        var pending = register.Take(job.Type.Letter, today.Year, job.Type.Kind, key, ids, folder);
        try
        {
            var html = await job.Render(_renderer, new DocumentIdentity(job.Type.Kind, pending.Number, today, Version));
            var pdf = await browser.PrintAsync(html, cancellation);
            return register.Publish(pending, pdf, PdfPages.Count(pdf), Outcomes(job.Items));
        }
        catch (Exception e) when (e is PrintException or OperationCanceledException)
        {
            register.Void(pending, e.Message);
            throw;
        }
    }

    private static string Outcomes(IReadOnlyList<DeterminedItem> items) => JsonSerializer.Serialize(
        items.GroupBy(i => i.Item.Id ?? "", StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Max(i => i.Outcome).Word(), StringComparer.Ordinal));

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        await _renderer.DisposeAsync();
    }
}
