using System.Globalization;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;
using ExamDocs.Templates.FirstVisit;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>
/// Prints papers on which a first visit is written down by hand. They hold nothing of any record: they are not numbered, and no
/// register is opened.
/// </summary>
public static class PrintFirstVisitSheets
{
    /// <summary>Sheets of one pile; common practice, no source: more are printed in a second run.</summary>
    public const int MostItems = 500;

    /// <exception cref="OutputRefusedException">The pile may not be written there.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static async Task<FirstVisitResult> RunAsync(FirstVisitRequest request, CancellationToken cancellation = default)
    {
        request.Outputs.Require(request.OutFile);
        if ((EarlierRecord.Unknown([.. request.Items.Select(i => i.Category)], request.Rules) ?? Objection(request)) is { } why)
            return new FirstVisitResult(0, why, null);
        IReadOnlyList<BlankItems> items =
            request.Items.Count > 0
                ? [.. request.Items.Select(i => new BlankItems(request.Rules.FindCategory(i.Category)!, i.Count))]
                : [.. request.Rules.Categories.Select(c => new BlankItems(c, 1))];
        try
        {
            var model = new FirstVisitModel(items, request.Style.Letterhead, ProgramVersion.Current);
            var (pile, fault) = await PrintAsync(model, request, cancellation);
            if (pile is null)
                return new FirstVisitResult(0, $"the sheets were not printed whole: {fault}", null);
            request.Outputs.Write(request.OutFile, pile);
            return new FirstVisitResult(PdfPages.Count(pile), null, null);
        }
        catch (PrintException e)
        {
            return new FirstVisitResult(0, null, RunFailure.Sentence(e));
        }
    }

    private static string? Objection(FirstVisitRequest request) =>
        request.Items.Select(i => (i.Category, Count: (long)i.Count)).FirstOrDefault(i => i.Count < 1) is { Category: { } none }
            ? $"how many sheets of {none}? Write a number from 1, for example {none}=3"
        : request.Items.Sum(i => (long)i.Count) > MostItems
            ? string.Create(CultureInfo.InvariantCulture, $"these are sheets for more than {MostItems} items: print them in several runs")
        : null;

    private static async Task<(byte[]? Pile, string? Fault)> PrintAsync(
        FirstVisitModel model,
        FirstVisitRequest request,
        CancellationToken cancellation
    )
    {
        await using var renderer = new DocumentRenderer();
        var html = await request.Style.Language.InAsync(() => renderer.HtmlAsync(model));
        await using var pages = new UnnumberedPages(request.Browser);
        return await pages.PrintAsync(html, cancellation);
    }
}
