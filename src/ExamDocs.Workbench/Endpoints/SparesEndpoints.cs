using ExamDocs.UseCases.Commands;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using NodaTime.Text;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>Parts that have to be replaced, set against a stock list that is only read; nothing of it is kept.</summary>
internal static class SparesEndpoints
{
    private const string Workbook = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    private const int UsualMonths = 12;

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/spares", (WorkbenchRequest request, Who who) =>
            Page(
                new SparesModel(
                    new AskedDays("", LocalDatePattern.Iso.Format(request.Today().PlusMonths(UsualMonths)), ""),
                    null,
                    [],
                    WorkbenchWords.In(who.Now.Language).Missing(request.Register),
                    WorkbenchWords.In(who.Now.Language)
                )
            )
        );
        pages.MapPost("/spares", ListAsync);
    }

    private static IResult Page(SparesModel model) =>
        Answer.Page<SparesPage>(model, model.Refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static async Task<IResult> ListAsync(HttpContext context, WorkbenchRequest request, Who who, CancellationToken cancellation)
    {
        var form = await context.Request.ReadFormAsync(cancellation);
        var words = WorkbenchWords.In(who.Now.Language);
        var asked = new AskedDays("", form["to"].ToString().Trim(), form["employer"].ToString().Trim());
        IResult Refused(string why) => Page(new SparesModel(asked, null, [], why, words));
        if (words.Missing(request.Register) is { } missing)
            return Refused(missing);
        if (LocalDatePattern.Iso.Parse(asked.To) is not { Success: true, Value: var to })
            return Refused(words.NotADay(asked.To));
        var stock = await StockAsync(form, cancellation);
        if (stock?.Refused is { } unreadable)
            return Refused(words.Say(unreadable));
        var plan = WriteSpares.Plan(
            new SparesRequest(request.Register.Place, to, request.Today())
            {
                Employer = asked.Employer.Length == 0 ? null : asked.Employer,
            },
            stock
        );
        return form["go"] == "order"
            ? TypedResults.File(WriteSpares.Workbook(plan, words.Messages), Workbook, "order.xlsx")
            : Page(new SparesModel(asked, plan, stock?.Remarks ?? [], null, words));
    }

    private static async Task<StockRead?> StockAsync(IFormCollection form, CancellationToken cancellation)
    {
        if (form.Files.FirstOrDefault(f => f.Length > 0) is not { } file)
            return null;
        using var bytes = new MemoryStream();
        await file.CopyToAsync(bytes, cancellation);
        return WriteSpares.Stock(bytes.ToArray(), file.FileName);
    }
}
