using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Report;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// Compares what issued documents say with what would be printed now. Both are composed by this version of the program, the issued one
/// from the data embedded in it, without number and day: so a new version's wording makes no other document, and other data do.
/// </summary>
internal sealed class IssuedContent(DocumentRegister register, KnownRules rules) : IAsyncDisposable
{
    /// <summary>Members of an embedded outcome that say what was decided of an item.</summary>
    private static readonly string[] Decided = ["id", "outcome", "until", "nextExaminationBy"];

    private readonly DocumentRenderer _renderer = new();
    private readonly Dictionary<string, (DeterminedVisit? Visit, Func<Observation, PhotoPrint?> Photos)> _visits = new(
        StringComparer.Ordinal
    );
    private readonly Dictionary<(DeterminedVisit, bool, ReadingDistance), ILookup<string, DocumentJob>> _composed = [];

    /// <summary>What is embedded in an issued document.</summary>
    /// <returns>Null where this version cannot read it.</returns>
    public EarlierDocument? Read(DocumentStatus document)
    {
        var pdf = register.Content(register.FindByNumber(document.Number)!);
        return DocumentContents.Of(pdf).Contents is { } contents ? new EarlierDocument(document, contents, pdf) : null;
    }

    /// <summary>Whether a document says what a job would print. Letterhead and signature count only where the run names them.</summary>
    public async Task<bool> SaysTheSameAsync(EarlierDocument document, DocumentJob job)
    {
        var basis = document.Contents.Basis;
        var signature =
            job.Signature is { } own && (own.Name, own.IsTimestamped) != (basis.Signature?.Name, basis.Signature?.IsTimestamped)
                ? own
                : basis.Signature;
        return await IsSameAsync(document, [job with { Letterhead = job.Letterhead ?? basis.Letterhead, Signer = null }], signature);
    }

    /// <summary>Whether a document says what the same document of another version of its visit would say.</summary>
    /// <param name="document">The document.</param>
    /// <param name="visit">The other version.</param>
    /// <param name="photos">Its photos.</param>
    public Task<bool> StillHoldsAsync(EarlierDocument document, DeterminedVisit visit, Func<Observation, PhotoPrint?> photos)
    {
        var basis = document.Contents.Basis;
        return IsSameAsync(document, Jobs(basis, visit, photos, RecomposedDocument.LeftOutByName), basis.Signature);
    }

    private async Task<bool> IsSameAsync(EarlierDocument document, IReadOnlyList<DocumentJob> jobs, ElectronicSignature? signature)
    {
        if (jobs.Count == 0)
            return false;
        var now = new List<ComposedPage>();
        foreach (var job in jobs)
            now.Add(await PageAsync(job, signature));
        foreach (var before in await PagesAsync(document))
        {
            if (now.Exists(before.IsSameAs))
                return true;
        }
        return false;
    }

    /// <summary>The pages that may be the document's, with its own pictures; none where it would be decided otherwise now.</summary>
    private async Task<IReadOnlyList<ComposedPage>> PagesAsync(EarlierDocument document)
    {
        var basis = document.Contents.Basis;
        if (Determined(document) is not ({ } visit, var photos))
            return [];
        // Decided by other rules of the user's own: what it said by them cannot be made once more.
        if (!OwnRules.Of(visit).SequenceEqual(basis.OwnRules, StringComparer.Ordinal))
            return [];
        var pages = new List<ComposedPage>();
        var isPart = document.Contents.Record.PartOf is not null;
        foreach (var job in Jobs(basis, visit, photos, RecomposedDocument.LeftOut, isPart).Where(j => IsDecidedAlike(document.Contents, j)))
        {
            var page = await PageAsync(job, basis.Signature);
            if (page.Pictures.Count == document.Pictures.Count)
                pages.Add(page with { Pictures = document.Pictures });
        }
        return pages;
    }

    private async Task<ComposedPage> PageAsync(DocumentJob job, ElectronicSignature? signature) =>
        ComposedPage.Of(await job.RenderAsync(_renderer, DocumentJob.Draft(job.Type) with { Signature = signature }));

    private IReadOnlyList<DocumentJob> Jobs(
        DocumentBasis basis,
        DeterminedVisit visit,
        Func<Observation, PhotoPrint?> photos,
        Func<DocumentBasis, DeterminedVisit, LeftOutItems[]> leftOut,
        bool isPart = false
    )
    {
        if (isPart || basis.IsReportOfSeveral)
            return RecomposedDocument.Jobs(basis, visit, photos, leftOut(basis, visit));
        // All the others are composed once for a visit: a large one has thousands.
        var form = (visit, basis.PerItem, basis.Reading);
        if (!_composed.TryGetValue(form, out var jobs))
            _composed[form] = jobs = ComposeDocuments
                .Of(visit, basis.PerItem, basis.Reading, photos)
                .Jobs.ToLookup(j => Key(j.Type.Kind, j.Items.Select(i => i.Item.Id ?? "")), StringComparer.Ordinal);
        return RecomposedDocument.InTheFormOf(basis, jobs[Key(basis.Kind, basis.Items)]);
    }

    private static string Key(string kind, IEnumerable<string> items) => string.Join('\n', items.Prepend(kind));

    private (DeterminedVisit? Visit, Func<Observation, PhotoPrint?> Photos) Determined(EarlierDocument document)
    {
        var contents = document.Contents;
        // A part is of this document alone.
        if (contents.Record.PartOf is not null)
            return Again();
        var key = document.VisitKey;
        if (!_visits.TryGetValue(key, out var visit))
            _visits[key] = visit = Again();
        return visit;

        (DeterminedVisit?, Func<Observation, PhotoPrint?>) Again() =>
            (contents.Determined(rules), RecomposedDocument.PlacesOfPhotos(contents.Record));
    }

    /// <summary>A document of another version may have been decided by other rules: it does not say what its record gives now.</summary>
    private static bool IsDecidedAlike(DocumentContents contents, DocumentJob job) =>
        string.Equals(contents.Basis.Version, ProgramVersion.Current, StringComparison.Ordinal)
        || Results(contents.Outcome)
            .SequenceEqual(Results(FindingsFile.Write(job.Items, EmbeddedFiles.RecordName)), StringComparer.Ordinal);

    private static IReadOnlyList<string> Results(byte[] outcome)
    {
        using var json = JsonDocument.Parse(outcome);
        return
        [
            .. json
                .RootElement.GetProperty("items")
                .EnumerateArray()
                .Select(i =>
                    string.Join(
                        '\n',
                        Decided
                            .Select(m => i.GetProperty(m).GetString())
                            .Concat(i.GetProperty("reasons").EnumerateArray().Select(r => r.GetProperty("code").GetString()))
                    )
                ),
        ];
    }

    public ValueTask DisposeAsync() => _renderer.DisposeAsync();
}
