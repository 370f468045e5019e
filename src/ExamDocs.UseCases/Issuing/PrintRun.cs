using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Numbers, prints and publishes jobs one after the other; what the register has already is only put in place.</summary>
/// <param name="register">Where numbers come from.</param>
/// <param name="corrections">What the visits are known by in the register, and what their documents take the place of.</param>
/// <param name="folder">Where the documents go.</param>
/// <param name="today">Day of issue.</param>
internal sealed class PrintRun(DocumentRegister register, Corrections corrections, string folder, LocalDate today) : IAsyncDisposable
{
    private readonly DocumentRenderer _renderer = new();
    private readonly List<Issued> _documents = [];
    private readonly List<string> _unprintable = [];
    private readonly List<string> _remarks = [];
    private readonly List<Refusal> _refused = [];
    private readonly HashSet<string> _named = new(StringComparer.Ordinal);
    private readonly EmbeddedData _data = new();
    private Browser? _browser;

    public IReadOnlyList<Issued> Documents => _documents;

    /// <summary>Sentences about what could not be printed as it was typed.</summary>
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
                await IssueWithCopyAsync(job, cancellation);
            return null;
        }
        // A register that no longer holds what it should is not a reason to run again, and stops the whole command.
        catch (Exception e) when (RunFailure.Is(e) && e is not InvalidDataException)
        {
            return RunFailure.Sentence(e);
        }
    }

    /// <summary>The bytes of a document, as issued.</summary>
    public byte[] Content(IssuedDocument document) => register.Content(document);

    private async Task IssueWithCopyAsync(DocumentJob asked, CancellationToken cancellation)
    {
        if (await IssueAsync(asked, cancellation) is not ({ } issued, var job))
            return;
        _documents.Add(issued);
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
        if (register.FindIssued(key) is { } before)
        {
            register.Restore(before, folder);
            return (new Issued(before, IssuedNow: false), job);
        }
        if (FollowsRefused(job) || (Fits(job) is false && !job.IsWarning))
            return (null, job);
        // No number is taken before there is something to print with.
        _browser ??= await Browser.StartAsync();
        var glyphs = await GlyphFaultsAsync(draft, _browser, cancellation);
        if (glyphs.Count > 0 && !job.IsWarning)
            return await WithoutAsync(job, PrintRules.GlyphIsMissing, glyphs, cancellation);
        if (glyphs.Count > 0)
            Tell(job, PrintRules.GlyphIsMissing, Sentence(glyphs));
        // A warning that lacks a letter is printed, and the letter is named once.
        var (issued, faults) = await PrintAsync(job, key, _browser, isChecked: glyphs.Count == 0, cancellation);
        return issued is null
            ? await WithoutAsync(job, PrintRules.PrintIsFaithful, faults, cancellation)
            : (new Issued(issued, IssuedNow: true), job);
    }

    /// <summary>
    /// A schedule is made once more without the items that cannot be printed whole; what belongs to no item holds all of it back.
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
            Tell(job, rule, Sentence(faults));
            return (null, job);
        }
        foreach (var (item, text) in left.Refused)
        {
            _refused.Add(new Refusal(item.Item.Id ?? "", [rule.Code], WhatIs(job)));
            _unprintable.Add(
                $"{rule.Code}: {job.Type.Kind} of {item.Item.Id}: {text}; it is refused alone, and the other items are "
                    + $"printed. Hint: {rule.Hint}"
            );
        }
        return await IssueAsync(LikeIt(rest, job), cancellation);
    }

    private static string Sentence(IReadOnlyList<PrintFault> faults) =>
        string.Join("; ", faults.Take(3).Select(f => f.ToString())) + (faults.Count > 3 ? " and more" : "");

    // A label that says when to examine again says that the item was reported as fit.
    private bool FollowsRefused(DocumentJob job) =>
        job.Type == DocumentTypes.DueLabel
        && job.Items.Any(i => _refused.Exists(r => string.Equals(r.Item, i.Item.Id, StringComparison.Ordinal)));

    private bool Fits(DocumentJob job)
    {
        var shortfalls = job.Language.In(job.Shortfalls);
        foreach (var (rule, text) in shortfalls.Where(s => s.Rule.Severity is not Severity.Error))
            _remarks.Add($"{rule.Code}: {job.Type.Kind} of {Names(job)}: {text}. Hint: {rule.Hint}");
        var errors = shortfalls.Where(s => s.Rule.Severity is Severity.Error).ToList();
        if (errors.Count > 0)
            Tell(job, errors[0].Rule, string.Join("; ", errors.Select(e => e.Text)));
        return errors.Count == 0;
    }

    private static string WhatIs(DocumentJob job) =>
        job.Type == DocumentTypes.DueLabel ? "next-examination label" : "report or certificate";

    private static string Names(DocumentJob job) =>
        $"{string.Join(", ", job.Items.Take(3).Select(i => i.Item.Id))}{(job.Items.Count > 3 ? " and others" : "")}";

    private static async Task<IReadOnlyList<PrintFault>> GlyphFaultsAsync(string draft, Browser browser, CancellationToken cancellation) =>
        MissingGlyphs.MayOccurIn(draft)
            ? FaithfulPrint.Lacking(draft, MissingGlyphs.In(draft, await browser.PrintAsync(draft, cancellation)))
            : [];

    /// <summary>Holds a document back, unless it tells of a danger, and says so.</summary>
    private void Tell(DocumentJob job, RuleInfo rule, string what)
    {
        if (!job.IsWarning)
            _refused.AddRange(job.Items.Select(i => new Refusal(i.Item.Id ?? "", [rule.Code], WhatIs(job))));
        _unprintable.Add(
            $"{rule.Code}: {job.Type.Kind} of {Names(job)}: "
                + $"{what}; {(job.IsWarning ? "it is printed all the same, because it warns of a danger" : "it is held back")}. Hint: {rule.Hint}"
        );
    }

    /// <returns>No document, and why, where it is held back because the print is not faithful; its number is void then.</returns>
    private async Task<(IssuedDocument? Document, IReadOnlyList<PrintFault> Faults)> PrintAsync(
        DocumentJob job,
        string key,
        Browser browser,
        bool isChecked,
        CancellationToken cancellation
    )
    {
        var ids = job.Items.Select(i => i.Item.Id ?? "").ToList();
        var replaces = corrections.ReplacedBy(job);
        var pending = register.Take(
            new DocumentRequest(job.Type.Letter, today.Year, job.Type.Kind, key, ids, folder)
            {
                Language = job.Language.Tag,
                Visit = corrections.NumberOf(job.Visit),
                CopyOf = job.CopyOf?.Number,
                Replaces = replaces,
            }
        );
        try
        {
            var identity = new DocumentIdentity(job.Type.Kind, pending.Number, today, ProgramVersion.Current)
            {
                Replaces = [.. replaces.Select(r => (r.Number, corrections.Reason))],
            };
            var html = await job.RenderAsync(_renderer, identity);
            var printed = await browser.PrintAsync(html, cancellation);
            var faults = isChecked ? FaithfulPrint.Faults(html, printed) : [];
            if (faults.Count > 0 && !job.IsWarning)
            {
                register.Void(pending, $"{PrintRules.PrintIsFaithful.Code}: {PrintRules.PrintIsFaithful.Title}: it was not");
                return (null, faults);
            }
            if (faults.Count > 0)
                Tell(job, PrintRules.PrintIsFaithful, Sentence(faults));
            var pdf = await FinishAsync(job, identity, printed, cancellation);
            return (register.Publish(pending, pdf, PdfPages.Count(pdf), Outcomes(job.Items)), []);
        }
        catch (Exception e) when (e is PrintException or OperationCanceledException)
        {
            register.Void(pending, e.Message);
            throw;
        }
    }

    private async Task<byte[]> FinishAsync(DocumentJob job, DocumentIdentity identity, byte[] printed, CancellationToken cancellation)
    {
        if (job.Signer is not { } signer)
            return Finisher.Finish(printed, _data.Of(job, identity));
        if (
            job.SignedBy is { } person
            && !string.Equals(person.Trim(), signer.Key.Name, StringComparison.OrdinalIgnoreCase)
            && _named.Add(person)
        )
            _remarks.Add($"{person} is to sign by the record, and the key is of {signer.Key.Name}: both names are printed");
        return await Finisher.FinishSignedAsync(
            printed,
            _data.Of(job, identity),
            signer,
            job.Language.Words.Common.SignatureField,
            cancellation
        );
    }

    private static string Outcomes(IReadOnlyList<DeterminedItem> items) =>
        JsonSerializer.Serialize(
            items
                .GroupBy(i => i.Item.Id ?? "", StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => g.Max(i => i.Outcome).Word(), StringComparer.Ordinal)
        );

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        await _renderer.DisposeAsync();
    }
}
