using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Intake.Workbook.Tables;
using ExamDocs.Templates.Lessons;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Teaching;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of the records.</summary>
/// <param name="Place">The register.</param>
/// <param name="OutFile">The PDF to write, as the user typed it.</param>
/// <param name="Today">The day on which it is looked at.</param>
public sealed record TeachRequest(string Place, string OutFile, LocalDate Today)
{
    /// <summary>The workbook to write besides; null for none.</summary>
    public string? WorkbookFile { get; init; }

    /// <summary>Whose kit; null for everybody's.</summary>
    public string? Employer { get; init; }

    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;

    /// <summary>How the pages are printed.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }
}

/// <summary>What was written, or why nothing was.</summary>
/// <param name="Lessons">What was counted; null where nothing was.</param>
/// <param name="Refused">Why nothing was written; null where it was.</param>
/// <param name="Failure">Why disk or browser stopped the run; null where nothing did.</param>
public sealed record TeachResult(RecordLessons? Lessons, string? Refused, string? Failure)
{
    /// <summary>Visits and items that were counted.</summary>
    public (int Visits, int Items) Counted => (Lessons?.Visits ?? 0, Lessons?.Items ?? 0);
}

/// <summary>
/// Prints what the records of a register teach, with a workbook of the same numbers. It decides on no item; the pages are not numbered
/// and no register knows them.
/// </summary>
public static class TeachFromRegister
{
    /// <exception cref="OutputRefusedException">A file may not be written there.</exception>
    /// <exception cref="IOException">A file cannot be written.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static async Task<TeachResult> RunAsync(TeachRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        var outputs = request.Outputs.For([], request.Place);
        outputs.Require(request.OutFile, request.WorkbookFile);
        if (ReadLessons.From(request.Place, request.Employer, request.Today) is not { } lessons)
            return new(
                null,
                request.Employer is { } name ? $"no examination of kit of {name} is on record" : "no examination is on record",
                null
            );
        try
        {
            var (pages, fault) = await PrintAsync(lessons, request, cancellation);
            if (pages is null)
                return new(lessons, $"the pages were not printed whole: {fault}", null);
            outputs.Write(request.OutFile, pages);
            if (request.WorkbookFile is { } workbook)
                outputs.Write(workbook, TableWorkbook.Of(LessonsTables.Of(lessons)));
            return new(lessons, null, null);
        }
        catch (PrintException e)
        {
            return new(lessons, null, RunFailure.Sentence(e));
        }
    }

    private static async Task<(byte[]? Pages, string? Fault)> PrintAsync(
        RecordLessons lessons,
        TeachRequest request,
        CancellationToken cancellation
    )
    {
        var model = new LessonsModel(lessons, request.Today, request.Style.Letterhead, ProgramVersion.Current);
        await using var renderer = new DocumentRenderer();
        var html = await request.Style.Language.InAsync(() => renderer.HtmlAsync(model));
        await using var pages = new UnnumberedPages(request.Browser);
        return await pages.PrintAsync(html, cancellation);
    }
}
