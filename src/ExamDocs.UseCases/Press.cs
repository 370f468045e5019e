using System.Text.Json;
using ExamDocs.Core.Determination;
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
    private readonly List<Refusal> _refused = [];
    private Browser? _browser;

    public IReadOnlyList<Issued> Documents => _documents;

    /// <summary>Sentences about characters that no installed font has.</summary>
    public IReadOnlyList<string> Unprintable => _unprintable;

    /// <summary>Items whose document was held back for that.</summary>
    public IReadOnlyList<Refusal> Refused => _refused;

    /// <returns>Why it stopped before the last job; null where it did not.</returns>
    public async Task<string?> RunAsync(IReadOnlyList<DocumentJob> jobs, CancellationToken cancellation)
    {
        try
        {
            foreach (var job in jobs)
            {
                if (await IssueAsync(job, cancellation) is not { } issued)
                    continue;
                _documents.Add(issued);
                // What is held back has no copy: there is nothing that it could be a copy of.
                if (job.Copy is { } copy && await IssueAsync(copy(issued.Document) with { Language = job.Language, Letterhead = job.Letterhead }, cancellation) is { } copied)
                    _documents.Add(copied with { CopyOf = issued.Document.Number });
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
        // No number is taken before there is something to print with.
        _browser ??= await Browser.StartAsync();
        if (MissingGlyphs.MayOccurIn(draft) && await LacksGlyphsAsync(job, draft, _browser, cancellation) && !job.IsWarning)
            return null;
        return new Issued(await PrintAsync(job, key, _browser, cancellation), IssuedNow: true);
    }

    private async Task<bool> LacksGlyphsAsync(DocumentJob job, string draft, Browser browser, CancellationToken cancellation)
    {
        var missing = MissingGlyphs.In(draft, await browser.PrintAsync(draft, cancellation));
        if (missing.Count == 0)
            return false;
        if (!job.IsWarning)
            _refused.AddRange(job.Items.Select(i => new Refusal(i.Item.Id ?? "", [PrintRules.GlyphIsMissing.Code])));
        _unprintable.Add($"{PrintRules.GlyphIsMissing.Code}: {job.Type.Kind} of {string.Join(", ", job.Items.Take(3).Select(i => i.Item.Id))}{(job.Items.Count > 3 ? " and others" : "")}: "
            + $"no installed font has {MissingGlyphs.Name(missing)}; {(job.IsWarning ? "it is printed without, for the danger's sake" : "it is held back")}. Hint: {PrintRules.GlyphIsMissing.Hint}");
        return true;
    }

    private async Task<IssuedDocument> PrintAsync(DocumentJob job, string key, Browser browser, CancellationToken cancellation)
    {
        var ids = job.Items.Select(i => i.Item.Id ?? "").ToList();
        var pending = register.Take(job.Type.Letter, today.Year, job.Type.Kind, key, ids, folder);
        try
        {
            var html = await job.RenderAsync(_renderer, new DocumentIdentity(job.Type.Kind, pending.Number, today, Version));
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
