using ExamDocs.Core.Records;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.UseCases.Commands;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>A list of the user's own that was dropped on the desk: what each column is, and what comes out. It is only read.</summary>
internal static class ListEndpoints
{
    private const string Workbook = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/visit/{id}/list", Show);
        pages.MapPost("/visit/{id}/list", SettleAsync);
        pages.MapGet("/visit/{id}/list/kit.xlsx", Download);
        pages.MapGet("/visit/{id}/list/map.json", DownloadMap);
    }

    private static IResult Show(string id, HttpContext context, DeskFolder desk, Who who, WorkbenchRequest request) =>
        desk.Find(id) is { List: not null } visit
            ? Page(visit, Day(context.Request.Query["as-of"].ToString(), request), null, who, request)
            : TypedResults.NotFound();

    private static IResult Page(DeskVisit visit, LocalDate asOf, string? refused, Who who, WorkbenchRequest request)
    {
        var words = WorkbenchWords.In(who.Now.Language);
        var (list, unreadable) = Open(visit, request);
        if (list is null)
            return Answer.Page<MessagePage>(
                new MessageModel(visit.Name, words.Unreadable(visit.Name, unreadable!), $"/visit/{visit.Id}", words),
                StatusCodes.Status422UnprocessableEntity
            );
        return Answer.Page<ListPage>(
            new ListModel(visit, list.Mapping, list.ToSettle, Taken(list, asOf), asOf, refused, words),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
        );
    }

    private static async Task<IResult> SettleAsync(
        string id,
        HttpContext context,
        DeskFolder desk,
        Who who,
        WorkbenchRequest request,
        CancellationToken cancellation
    )
    {
        if (desk.Find(id) is not { List: not null } visit)
            return TypedResults.NotFound();
        var form = await context.Request.ReadFormAsync(cancellation);
        var words = WorkbenchWords.In(who.Now.Language);
        if (ListForm.Read(form, request.Rules) is not { } settled)
            return Page(visit, Yesterday(request), words.ListFormIncomplete, who, request);
        visit.KeepListMap(MapFile.Write(settled));
        var typed = form["as-of"].ToString().Trim();
        var asOf = Day(typed, request);
        if (typed.Length > 0 && !string.Equals(typed, LocalDatePattern.Iso.Format(asOf), StringComparison.Ordinal))
            return Page(visit, asOf, words.NotADayBefore(typed), who, request);
        if (form["go"] == "record" && Open(visit, request).List is { } list && Taken(list, asOf) is { } adopted)
            return await RecordAsync(adopted.Record, desk, who, request, cancellation);
        var then = form["go"] == "workbook" ? "/kit.xlsx" : "";
        return Answer.SeeOther($"/visit/{id}/list{then}?as-of={LocalDatePattern.Iso.Format(asOf)}{(then.Length == 0 ? "#result" : "")}");
    }

    private static async Task<IResult> RecordAsync(
        ExaminationRecord adopted,
        DeskFolder desk,
        Who who,
        WorkbenchRequest request,
        CancellationToken cancellation
    )
    {
        var (draft, refused) = StartVisit.Run(
            new StartVisitRequest(null, request.Register.Place, request.Today(), RecordEndpoints.Examiner(who)) { Adopted = adopted }
        );
        if (draft is null)
            throw new InvalidDataException(refused);
        return await RecordEndpoints.OpenAsync(draft, desk, cancellation);
    }

    private static IResult Download(string id, HttpContext context, DeskFolder desk, WorkbenchRequest request) =>
        desk.Find(id) is { List: { } path } visit
        && Open(visit, request).List is { } list
        && Taken(list, Day(context.Request.Query["as-of"].ToString(), request)) is { } adopted
            ? TypedResults.File(list.Workbook(adopted), Workbook, $"{Path.GetFileNameWithoutExtension(path)} - to examine.xlsx")
            : TypedResults.NotFound();

    private static IResult DownloadMap(string id, DeskFolder desk, WorkbenchRequest request) =>
        desk.Find(id) is { List: not null } visit && Open(visit, request).List is { } list
            ? TypedResults.File(MapFile.Write(list.Mapping), "application/json", "kit-map.json")
            : TypedResults.NotFound();

    private static (OpenedList? List, string? Unreadable) Open(DeskVisit visit, WorkbenchRequest request) =>
        OpenedList.Open(visit.List!, visit.ListMap is { } map ? MapFile.Read(map, request.Rules).Map : null, request.Rules);

    /// <summary>Null while something is left to settle, or nothing comes out.</summary>
    private static AdoptedList? Taken(OpenedList list, LocalDate asOf) =>
        list.ToSettle.Count == 0 && list.Take(asOf) is { Record.Items.Count: > 0 } adopted ? adopted : null;

    /// <summary>What was typed, where it is a day before today; a visit of today must come after it.</summary>
    private static LocalDate Day(string typed, WorkbenchRequest request) =>
        LocalDatePattern.Iso.Parse(typed) is { Success: true, Value: var day } && day <= Yesterday(request) ? day : Yesterday(request);

    private static LocalDate Yesterday(WorkbenchRequest request) => request.Today().PlusDays(-1);
}
