using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Which documents of a visit are to be issued, and how they are printed.</summary>
/// <param name="Style">How they are printed.</param>
/// <param name="PerItem">One report for each item instead of a schedule of all.</param>
/// <param name="Only">Only documents of these kinds; empty for all that a visit calls for by itself.</param>
internal sealed record WantedDocuments(PrintStyle Style, bool PerItem, IReadOnlyList<string> Only)
{
    /// <summary>All that a readable input calls for or may be asked for, and what is refused.</summary>
    public Composition ComposedOf(CheckedInput input) => ComposeDocuments.Of(input.Visit!, PerItem, Style.Reading, input.Photos.Of);

    public bool Wants(DocumentJob job) => Only.Count == 0 ? !job.Type.IsOnRequest : Only.Contains(job.Type.Kind, StringComparer.Ordinal);

    /// <summary>The jobs that are wanted, without what a later visit has ended.</summary>
    public IEnumerable<DocumentJob> Of(Composition composition, EndedLines ended) =>
        composition.Jobs.Where(Wants).Select(j => j.In(Style)).Select(ended.Without).OfType<DocumentJob>();
}
