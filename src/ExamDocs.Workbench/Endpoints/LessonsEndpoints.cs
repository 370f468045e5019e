using ExamDocs.UseCases.Commands;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>What the records teach: whose kit, then the pages or the workbook.</summary>
internal static class LessonsEndpoints
{
    private const string Workbook = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/lessons", (WorkbenchRequest request, Who who) => Show(request, who, null, null));
        pages.MapPost("/lessons", MakeAsync);
    }

    private static IResult Show(WorkbenchRequest request, Who who, string? chosen, string? refused)
    {
        var words = WorkbenchWords.In(who.Now.Language);
        var employers = request.Register.Exists ? TeachFromRegister.Employers(request.Register.Place, request.Today()) : [];
        return Answer.Page<LessonsPage>(
            new LessonsPageModel(employers, chosen, words.Missing(request.Register), refused, words),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
        );
    }

    private static async Task<IResult> MakeAsync(HttpContext context, WorkbenchRequest request, Who who, CancellationToken cancellation)
    {
        var form = await context.Request.ReadFormAsync(cancellation);
        var (employer, words) = (form["employer"].ToString().Trim(), WorkbenchWords.In(who.Now.Language));
        if (!request.Register.Exists)
            return Show(request, who, employer, words.Missing(request.Register));
        var asked = new LessonsRequest(request.Register.Place, request.Today())
        {
            Employer = employer.Length == 0 ? null : employer,
            Style = who.Style(request.Now()),
        };
        if (form["make"] == "workbook")
            return TeachFromRegister.Workbook(asked) is { } workbook
                ? TypedResults.File(workbook, Workbook, "lessons.xlsx")
                : Show(request, who, employer, words.NothingToLearn);
        var made = await TeachFromRegister.PrintAsync(asked, cancellation);
        return made.Pages is { } pages
            ? TypedResults.File(pages, "application/pdf", "lessons.pdf")
            : Show(request, who, employer, made.Lessons is null ? words.NothingToLearn : made.Refused ?? made.Failure);
    }
}
