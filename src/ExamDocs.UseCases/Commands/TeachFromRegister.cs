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
/// <param name="Today">The day on which it is looked at.</param>
public record LessonsRequest(string Place, LocalDate Today)
{
    /// <summary>Whose kit; null for everybody's.</summary>
    public string? Employer { get; init; }

    /// <summary>How the pages are printed.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }
}

/// <summary>What the user asks of the records, and where it is to be written.</summary>
/// <param name="Place">The register.</param>
/// <param name="OutFile">The PDF to write, as the user typed it.</param>
/// <param name="Today">The day on which it is looked at.</param>
public sealed record TeachRequest(string Place, string OutFile, LocalDate Today) : LessonsRequest(Place, Today)
{
    /// <summary>The workbook to write besides; null for none.</summary>
    public string? WorkbookFile { get; init; }

    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;
}

/// <summary>What was made, or why nothing was.</summary>
/// <param name="Lessons">What was counted; null where nothing was.</param>
/// <param name="Refused">Why nothing was made; null where it was.</param>
/// <param name="Failure">Why disk or browser stopped the run; null where nothing did.</param>
public sealed record TeachResult(RecordLessons? Lessons, string? Refused, string? Failure)
{
    /// <summary>The pages; null where they were not printed.</summary>
    public byte[]? Pages { get; init; }

    /// <summary>Visits and items that were counted.</summary>
    public (int Visits, int Items) Counted => (Lessons?.Visits ?? 0, Lessons?.Items ?? 0);
}

/// <summary>
/// Prints what the records of a register teach, with a workbook of the same numbers. It decides on no item; the pages are not numbered
/// and no register knows them.
/// </summary>
public static class TeachFromRegister
{
    /// <summary>Makes the files.</summary>
    /// <exception cref="OutputRefusedException">A file may not be written there.</exception>
    /// <exception cref="IOException">A file cannot be written.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static async Task<TeachResult> RunAsync(TeachRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        var outputs = request.Outputs.For([], request.Place);
        outputs.Require(request.OutFile, request.WorkbookFile);
        var result = await PrintAsync(request, cancellation);
        if (result.Pages is not { } pages)
            return result;
        outputs.Write(request.OutFile, pages);
        if (request.WorkbookFile is { } workbook)
            outputs.Write(workbook, TableWorkbook.Of(LessonsTables.Of(result.Lessons!)));
        return result;
    }

    /// <summary>Prints the pages and writes no file.</summary>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static async Task<TeachResult> PrintAsync(LessonsRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (ReadLessons.From(request.Place, request.Employer, request.Today) is not { } lessons)
            return Nothing(request);
        try
        {
            var (pages, fault) = await PrintAsync(lessons, request, cancellation);
            return new(lessons, pages is null ? $"the pages were not printed whole: {fault}" : null, null) { Pages = pages };
        }
        catch (PrintException e)
        {
            return new(lessons, null, RunFailure.Sentence(e));
        }
    }

    /// <summary>The workbook alone; null where there is nothing to count.</summary>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static byte[]? Workbook(LessonsRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return ReadLessons.From(request.Place, request.Employer, request.Today) is { } lessons
            ? TableWorkbook.Of(LessonsTables.Of(lessons))
            : null;
    }

    /// <summary>Whose kit was examined, each name as it was typed last; sorted.</summary>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static IReadOnlyList<string> Employers(string place, LocalDate today) => ReadLessons.Employers(place, today);

    private static TeachResult Nothing(LessonsRequest request) =>
        new(null, request.Employer is { } name ? $"no examination of kit of {name} is on record" : "no examination is on record", null);

    private static async Task<(byte[]? Pages, string? Fault)> PrintAsync(
        RecordLessons lessons,
        LessonsRequest request,
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
