using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>One visit: what is to be mended, what was decided.</summary>
internal static class VisitEndpoints
{
    private const int Most = 60;
    private const string Workbook = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/visit/{id}", ShowAsync);
        pages.MapPost("/visit/{id}/mended", MendedAsync);
        pages.MapGet("/visit/{id}/annotated.xlsx", AnnotatedAsync);
    }

    private static async Task<IResult> ShowAsync(
        string id,
        DeskFolder desk,
        CheckedVisits visits,
        IssueRuns runs,
        Who who,
        CancellationToken cancellation
    ) => desk.Find(id) is { } visit ? await PageAsync(visit, visits, runs, who, null, cancellation) : TypedResults.NotFound();

    private static async Task<IResult> PageAsync(
        DeskVisit visit,
        CheckedVisits visits,
        IssueRuns runs,
        Who who,
        string? refused,
        CancellationToken cancellation
    )
    {
        // While it is being issued nothing is checked: the register is being written.
        var inputs = runs.Of(visit) is { IsAtWork: true } ? [] : await visits.OfAsync(visit, cancellation);
        return Answer.Page<VisitPage>(
            new VisitModel(
                visit,
                inputs,
                runs.Of(visit),
                AnnotateWorkbook.WhyNot(visit.Inputs) is null && inputs is [{ IsRead: true }],
                refused,
                WorkbenchWords.In(who.Now.Language)
            ),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
        );
    }

    private static async Task<IResult> MendedAsync(
        string id,
        HttpContext context,
        DeskFolder desk,
        CheckedVisits visits,
        IssueRuns runs,
        Who who,
        CancellationToken cancellation
    )
    {
        if (desk.Find(id) is not { } visit)
            return TypedResults.NotFound();
        // Its answers are in no file that could have been mended: the dropped one would put them out of sight.
        if (visit.Draft is not null)
            return await PageAsync(visit, visits, runs, who, WorkbenchWords.In(who.Now.Language).RecordedOnScreen, cancellation);
        var (files, refused) = await DroppedFiles.OfAsync(context, Most, WorkbenchWords.In(who.Now.Language), cancellation);
        if (refused is not null)
            return await PageAsync(visit, visits, runs, who, refused, cancellation);
        await visit.AddRoundAsync(files, cancellation);
        return Answer.SeeOther($"/visit/{id}");
    }

    private static async Task<IResult> AnnotatedAsync(string id, DeskFolder desk, CheckedVisits visits, CancellationToken cancellation)
    {
        if (desk.Find(id) is not { } visit || AnnotateWorkbook.WhyNot(visit.Inputs) is not null)
            return TypedResults.NotFound();
        var input = (await visits.OfAsync(visit, cancellation))[0];
        var copy = Path.Combine(Path.GetTempPath(), $"examdocs-{Guid.NewGuid():N}.xlsx");
        try
        {
            if (AnnotateWorkbook.Run(input, copy) is { } why)
                return TypedResults.Text(why, statusCode: StatusCodes.Status422UnprocessableEntity);
            return TypedResults.File(
                await File.ReadAllBytesAsync(copy, cancellation),
                Workbook,
                $"{Path.GetFileNameWithoutExtension(input.File)} - findings.xlsx"
            );
        }
        finally
        {
            File.Delete(copy);
        }
    }
}
