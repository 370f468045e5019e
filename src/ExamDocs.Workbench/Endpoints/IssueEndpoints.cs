using System.Globalization;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>Issuing a visit, and its documents.</summary>
internal static class IssueEndpoints
{
    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapPost("/visit/{id}/issue", Issue);
        pages.MapPost("/visit/{id}/stop", Stop);
        pages.MapGet("/visit/{id}/document/{name}", Document);
        pages.MapGet("/visit/{id}/documents.zip", All);
        pages.MapPost("/visit/{id}/labels", LabelsAsync);
        pages.MapGet("/visit/{id}/sheet/{name}", Sheet);
    }

    private static async Task<IResult> Issue(string id, HttpContext context, DeskFolder desk, IssueRuns runs)
    {
        if (desk.Find(id) is not { } visit)
            return TypedResults.NotFound();
        var form = await context.Request.ReadFormAsync();
        var reason = form["reason"].ToString().Trim().TrimEnd('.');
        // Without a fragment: a page that loads itself again would only scroll to it.
        runs.Start(visit, perItem: form["per-item"] == "yes", reason.Length == 0 ? null : reason);
        return Answer.SeeOther($"/visit/{id}");
    }

    private static IResult Stop(string id, DeskFolder desk, IssueRuns runs)
    {
        if (desk.Find(id) is not { } visit)
            return TypedResults.NotFound();
        runs.Of(visit)?.Stop();
        return Answer.SeeOther($"/visit/{id}");
    }

    private static IResult Document(string id, string name, DeskFolder desk) => Answer.PdfIn(desk.Find(id)?.DocumentFolder, name);

    private static IResult Sheet(string id, string name, DeskFolder desk) => Answer.PdfIn(desk.Find(id)?.SheetFolder, name);

    private static IResult All(string id, DeskFolder desk) => Answer.Zip(desk.Find(id)?.DocumentFolder, "documents.zip");

    private static async Task<IResult> LabelsAsync(
        string id,
        HttpContext context,
        DeskFolder desk,
        WorkbenchRequest request,
        Who who,
        CancellationToken cancellation
    )
    {
        if (desk.Find(id) is not { } visit)
            return TypedResults.NotFound();
        var form = await context.Request.ReadFormAsync(cancellation);
        // Only a stock that was offered: a name from outside must open no file.
        if (ReadLabelStock.Known.All(s => s.Name != form["stock"]))
            return TypedResults.NotFound();
        var start = int.TryParse(form["start"], CultureInfo.InvariantCulture, out var typed) ? typed : 1;
        var name = string.Create(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyyMMdd-HHmmss-fff}.pdf");
        var result = await PrintLabels.RunAsync(
            new LabelRequest
            {
                InputsOrNumbers = visit.Inputs,
                OutFile = Path.Combine(visit.SheetFolder, name),
                RegisterPath = request.Register.Place,
                Stock = ReadLabelStock.From(form["stock"].ToString()),
                Start = start,
                Today = request.Today(),
                Style = who.Style(request.Now()),
                Rules = request.Rules,
            },
            cancellation
        );
        var words = WorkbenchWords.In(who.Now.Language);
        return (result.Refused ?? result.Failure ?? (result.Labels.Count == 0 ? words.NoLabels : null)) is { } why
            ? Answer.Page<MessagePage>(new MessageModel(words.Labels, why, $"/visit/{id}", words), StatusCodes.Status422UnprocessableEntity)
            : Answer.SeeOther($"/visit/{id}/sheet/{name}");
    }
}
