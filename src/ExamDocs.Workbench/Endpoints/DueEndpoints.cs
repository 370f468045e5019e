using System.Text;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>What falls due: the page, and the same as a PDF, a workbook and a calendar file. Nothing of it is kept.</summary>
internal static class DueEndpoints
{
    private const string Workbook = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    private const int UsualMonths = 3;

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/due", (HttpContext context, WorkbenchRequest request, Who who) => Page(Read(context, request, who)));
        pages.MapGet("/due/due.xlsx", (HttpContext context, WorkbenchRequest request, Who who) =>
            Download(Read(context, request, who), m =>
                TypedResults.File(WriteDueWorkbook.Bytes(m.List!, m.Visits, m.Words.Messages), Workbook, "due.xlsx")
            )
        );
        pages.MapGet("/due/due.ics", (HttpContext context, WorkbenchRequest request, Who who) =>
            Download(Read(context, request, who), m =>
                TypedResults.File(Encoding.UTF8.GetBytes(WriteDueCalendar.Text(m.List!, m.Words.Messages)), "text/calendar", "due.ics")
            )
        );
        pages.MapGet("/due/plan.pdf", PlanAsync);
    }

    private static IResult Page(DueModel model) =>
        Answer.Page<DuePage>(model, model.Refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static IResult Download(DueModel model, Func<DueModel, IResult> file) => model.List is null ? Page(model) : file(model);

    private static async Task<IResult> PlanAsync(HttpContext context, WorkbenchRequest request, Who who, CancellationToken cancellation)
    {
        var model = Read(context, request, who);
        if (model.List is not { } list)
            return Page(model);
        var folder = Directory.CreateTempSubdirectory("examdocs-due-");
        try
        {
            var file = Path.Combine(folder.FullName, "plan.pdf");
            var printed = await PrintDue.RunAsync(
                new DuePrintRequest(list, model.Visits)
                {
                    PlanFile = file,
                    Employer = model.Asked.Employer.Length == 0 ? null : model.Asked.Employer,
                    Style = who.Style(request.Now()),
                },
                cancellation
            );
            return (printed.Refused ?? printed.Failure) is { } why
                ? Page(model with { Refused = why })
                : TypedResults.File(await File.ReadAllBytesAsync(file, cancellation), "application/pdf");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static DueModel Read(HttpContext context, WorkbenchRequest request, Who who)
    {
        var (words, today, query) = (WorkbenchWords.In(who.Now.Language), request.Today(), context.Request.Query);
        var asked = new AskedDays(
            Typed(query["from"].ToString(), today),
            Typed(query["to"].ToString(), today.PlusMonths(UsualMonths)),
            query["employer"].ToString().Trim()
        );
        DueModel Refused(string? why) => new(asked, null, [], why, words);
        if (words.Missing(request.Register) is { } missing)
            return Refused(missing);
        if (LocalDatePattern.Iso.Parse(asked.From) is not { Success: true, Value: var from })
            return Refused(words.NotADay(asked.From));
        if (LocalDatePattern.Iso.Parse(asked.To) is not { Success: true, Value: var to })
            return Refused(words.NotADay(asked.To));
        var list = ListDue.In(
            new DueRequest(request.Register.Place, from, to, today) { Employer = asked.Employer.Length == 0 ? null : asked.Employer }
        );
        var visits = VisitProposals.Of(list.Due, VisitProposals.UsualTogetherDays, new Dictionary<string, int>(StringComparer.Ordinal));
        return new(asked, list, visits, null, words);
    }

    private static string Typed(string typed, LocalDate usual) =>
        typed.Trim() is { Length: > 0 } day ? day : LocalDatePattern.Iso.Format(usual);
}
