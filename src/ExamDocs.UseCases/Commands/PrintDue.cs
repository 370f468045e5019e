using System.Globalization;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Templates.DuePlan;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks to have printed of what falls due.</summary>
/// <param name="List">What falls due.</param>
/// <param name="Visits">The visits proposed for it.</param>
public sealed record DuePrintRequest(DueList List, IReadOnlyList<ProposedVisit> Visits)
{
    /// <summary>The PDF of the plan, as the user typed it; null for none.</summary>
    public string? PlanFile { get; init; }

    /// <summary>The folder for a letter to each employer; null for none.</summary>
    public string? LettersFolder { get; init; }

    /// <summary>Whose kit was asked for; null for everybody's.</summary>
    public string? Employer { get; init; }

    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;

    /// <summary>How the pages are printed. A letter is in the employer's language, where its documents are in one.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }
}

/// <summary>What was written, or why nothing was.</summary>
/// <param name="Files">As named.</param>
/// <param name="Refused">Why nothing was written; null where it was.</param>
/// <param name="Failure">Why disk or browser stopped the run; null where nothing did.</param>
public sealed record DuePrintResult(IReadOnlyList<string> Files, string? Refused, string? Failure);

/// <summary>
/// Prints what falls due: a plan, and a letter to each employer. The pages are not numbered and no register knows them.
/// </summary>
public static class PrintDue
{
    /// <summary>More lines are hundreds of pages, which nobody reads; the workbook takes them all.</summary>
    public const int MostItems = 5_000;

    /// <exception cref="OutputRefusedException">A file may not be written there.</exception>
    /// <exception cref="IOException">A file cannot be written.</exception>
    public static async Task<DuePrintResult> RunAsync(DuePrintRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        var wanted = Wanted(request);
        request.Outputs.Require(wanted.Select(w => w.File));
        if (wanted.Select(w => w.List.Due.Count + w.List.Apart.Count).DefaultIfEmpty(0).Max() > MostItems)
            return new(
                [],
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"these are more than {MostItems} items for one PDF: name an employer or fewer days; the workbook takes them all"
                ),
                null
            );
        try
        {
            await using var renderer = new DocumentRenderer();
            await using var pages = new UnnumberedPages(request.Browser);
            var printed = new List<(string File, byte[] Pdf)>();
            foreach (var page in wanted)
            {
                var html = await page.Language.InAsync(() => page.HtmlAsync(renderer));
                var (pdf, fault) = await pages.PrintAsync(html, cancellation);
                if (pdf is null)
                    return new([], $"{page.File} was not printed whole: {fault}", null);
                printed.Add((page.File, pdf));
            }
            foreach (var (file, pdf) in printed)
                request.Outputs.Write(file, pdf);
            return new([.. printed.Select(p => p.File)], null, null);
        }
        catch (PrintException e)
        {
            return new([], null, RunFailure.Sentence(e));
        }
    }

    private static List<Page> Wanted(DuePrintRequest request)
    {
        var (style, wanted) = (request.Style, new List<Page>());
        if (request.PlanFile is { } file)
            wanted.Add(
                new(file, request.List, style.Language, renderer =>
                    renderer.HtmlAsync(
                        new DuePlanModel(
                            DuePages.Plan(request.List, request.Visits, request.Employer, Messages(style.Language)),
                            style.Letterhead,
                            ProgramVersion.Current
                        )
                    )
                )
            );
        foreach (var (employer, name, list) in request.LettersFolder is null ? [] : DuePages.ByEmployer(request.List))
        {
            var language = Language.Find(request.List.LanguageOf(employer) ?? "") ?? style.Language;
            var plan = DuePages.Plan(list, [], employer, Messages(language));
            wanted.Add(
                new(Path.Combine(request.LettersFolder!, name), list, language, renderer =>
                    renderer.HtmlAsync(new DueLetterModel(plan, style.Letterhead, ProgramVersion.Current))
                )
            );
        }
        return wanted;
    }

    private static Core.Findings.MessageLanguage Messages(Language language) =>
        ReadPrintStyle.Screen(language.Tag) ?? Core.Findings.MessageLanguage.English;

    private sealed record Page(string File, DueList List, Language Language, Func<DocumentRenderer, Task<string>> HtmlAsync);
}
