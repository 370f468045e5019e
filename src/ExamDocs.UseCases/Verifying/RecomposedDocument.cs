using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Rendering;
using ExamDocs.Intake;
using ExamDocs.Templates;
using ExamDocs.Templates.Shared;

namespace ExamDocs.UseCases.Verifying;

/// <summary>The same document made once more from what is within it.</summary>
internal static class RecomposedDocument
{
    /// <summary>The jobs of its kind and items that the visit calls for; more than one where items share an id.</summary>
    /// <remarks>Photos are not within. Where one was printed, its caption is; which were, the findings of reading say.</remarks>
    public static IReadOnlyList<DocumentJob> Jobs(DocumentContents contents, DeterminedVisit visit)
    {
        var (basis, photos) = (contents.Basis, PrintedPhotos(contents.Record));
        var composed = ComposeDocuments.Of(visit, basis.PerItem, basis.Reading, o => photos.Contains(o) ? Blank : null).Jobs;
        return [.. composed.Where(j => string.Equals(j.Type.Kind, basis.Kind, StringComparison.Ordinal)
                && j.Items.Select(i => i.Item.Id ?? "").SequenceEqual(basis.Items, StringComparer.Ordinal))
            .Select(j => basis.CopyOf is { } original ? j.Copy?.Invoke(original) : j).OfType<DocumentJob>()
            .Select(j => j with { Language = basis.Language, Letterhead = basis.Letterhead })];
    }

    public static Task<string> HtmlAsync(DocumentJob job, DocumentBasis basis, DocumentRenderer renderer) =>
        job.RenderAsync(renderer, new DocumentIdentity(basis.Kind, basis.Number, basis.IssuedOn, basis.Version) { Replaces = [.. basis.Replaces.Select(r => (r.Number, r.Reason))], Signature = basis.Signature });

    private static PhotoPrint Blank { get; } = new(default, 1, 1);

    private static HashSet<Observation> PrintedPhotos(ReadResult read)
    {
        var faulty = read.Findings.Select(f => f.Path).ToHashSet(StringComparer.Ordinal);
        var printed = from e in read.Record!.Examinations.Index()
                      from o in e.Item.Observations.Index()
                      where !string.IsNullOrWhiteSpace(o.Item.Photo)
                          && !faulty.Contains(string.Create(CultureInfo.InvariantCulture, $"/examinations/{e.Index}/observations/{o.Index}/photo"))
                      select o.Item;
        return new HashSet<Observation>(printed, ReferenceEqualityComparer.Instance);
    }
}
