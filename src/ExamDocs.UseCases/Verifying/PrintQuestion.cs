using ExamDocs.Core.Determination;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Do the pages say what follows from the data within, all of it and nothing besides?</summary>
internal static class PrintQuestion
{
    private const string Question = "print";

    private const int Quoted = 3;

    /// <param name="pdf">The whole file.</param>
    /// <param name="contents">What is within it.</param>
    /// <param name="jobs">What it may be, one at least.</param>
    /// <param name="renderer">Makes the pages.</param>
    public static async Task<Statement> AskAsync(byte[] pdf, DocumentContents contents, IReadOnlyList<DocumentJob> jobs, DocumentRenderer renderer)
    {
        if (contents.Basis.Version is var version && !string.Equals(version, ProgramVersion.Current, StringComparison.Ordinal))
            return Statement.NotChecked(Question, $"it was printed by version {version}, whose wording version {ProgramVersion.Current} does not know: its text could not be compared");
        IReadOnlyList<string> fewest = ["it has no pages that can be read"];
        foreach (var job in jobs)
        {
            if (await DifferencesAsync(pdf, contents, job, renderer) is { } found && (found.Count == 0 || found.Count < fewest.Count || ReferenceEquals(job, jobs[0])))
                fewest = found;
            if (fewest.Count == 0)
                return Statement.Holds(Question, "the pages say what follows from the data within, all of it and nothing besides; pictures and photos are not compared");
        }
        return Statement.Fails(Question, $"the pages do not say what follows from the data within: {string.Join("; ", fewest.Take(Quoted))}{(fewest.Count > Quoted ? "; and more" : "")}");
    }

    /// <returns>Null where the pages cannot be read.</returns>
    private static async Task<IReadOnlyList<string>?> DifferencesAsync(byte[] pdf, DocumentContents contents, DocumentJob job, DocumentRenderer renderer)
    {
        var html = await RecomposedDocument.HtmlAsync(job, contents.Basis, renderer);
        try
        {
            return FaithfulPrint.Differences(html, pdf);
        }
        catch (Exception e) when (e is PdfSyntaxException or ArgumentException or InvalidOperationException or FormatException or OverflowException or IOException or NotSupportedException)
        {
            return null;
        }
    }
}
