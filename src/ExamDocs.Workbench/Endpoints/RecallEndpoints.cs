using ExamDocs.Core.Recalls;
using ExamDocs.Intake.RuleFiles;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Recalling;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>A maker's safety notice: dropped or typed, looked up in the register, and what it names taken out of use.</summary>
internal static class RecallEndpoints
{
    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/recall", (KeptNotices notices, Who who, WorkbenchRequest request) => Start(notices, who, request, new(), []));
        pages.MapPost("/recall/dropped", DropAsync);
        pages.MapPost("/recall/typed", TypeAsync);
        pages.MapGet("/recall/{id}", Show);
        pages.MapPost("/recall/{id}/sweep", Sweep);
        pages.MapPost("/recall/{id}/stop", Stop);
        pages.MapGet("/recall/{id}/paper/{name}", Paper);
        pages.MapGet("/recall/{id}/papers.zip", Papers);
        pages.MapGet("/recall/{id}/record.json", Record);
    }

    private static IResult Start(KeptNotices notices, Who who, WorkbenchRequest request, NoticeTyped typed, IReadOnlyList<string> faults)
    {
        if (who.IsUnknown)
            return Answer.SeeOther("/who");
        var words = WorkbenchWords.In(who.Now.Language);
        return Answer.Page<RecallPage>(
            new RecallModel(notices.All, typed, faults, words.Missing(request.Register), words),
            faults.Count == 0 ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
        );
    }

    private static async Task<IResult> DropAsync(
        HttpContext context,
        KeptNotices notices,
        Who who,
        WorkbenchRequest request,
        CancellationToken cancellation
    )
    {
        var (files, refused) = await DroppedFiles.OfAsync(context, 1, WorkbenchWords.In(who.Now.Language), cancellation);
        if (refused is not null)
            return Start(notices, who, request, new(), [refused]);
        await using var file = files[0].Open();
        // One byte more than is read tells that there is more.
        var bytes = new byte[RuleFile.MaxBytes + 1];
        var read = await file.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false, cancellation);
        return Taken(RuleFile.Recall(bytes.AsMemory(0, read)), notices, who, request, new());
    }

    private static async Task<IResult> TypeAsync(
        HttpContext context,
        KeptNotices notices,
        Who who,
        WorkbenchRequest request,
        CancellationToken cancellation
    )
    {
        var typed = NoticeTyped.Of(await context.Request.ReadFormAsync(cancellation));
        return Taken(RuleFile.Recall(typed.Json), notices, who, request, typed);
    }

    private static IResult Taken(RuleFile<SafetyNotice> read, KeptNotices notices, Who who, WorkbenchRequest request, NoticeTyped typed) =>
        read.Value is { } notice ? Answer.SeeOther($"/recall/{notices.Keep(notice).Id}") : Start(notices, who, request, typed, read.Faults);

    private static IResult Show(string id, KeptNotices notices, RecallRuns runs, Who who, WorkbenchRequest request)
    {
        if (notices.Find(id) is not { } notice)
            return TypedResults.NotFound();
        var (words, run) = (WorkbenchWords.In(who.Now.Language), runs.Of(notice));
        IReadOnlyList<PlannedItem> items =
            run is { IsAtWork: true } || !request.Register.Exists
                ? []
                : SweepRecall.Plan(request.Register.Place, notice.Notice, request.Today());
        return Answer.Page<RecalledPage>(
            new RecalledModel(notice, items, run, words.Missing(request.Register), words) { IsUnknown = who.Now.Name.Length == 0 }
        );
    }

    private static IResult Sweep(string id, KeptNotices notices, RecallRuns runs, Who who)
    {
        if (notices.Find(id) is not { } notice)
            return TypedResults.NotFound();
        if (who.Now.Name.Length == 0)
            return Answer.SeeOther("/who");
        runs.Start(notice);
        return Answer.SeeOther($"/recall/{id}");
    }

    private static IResult Stop(string id, KeptNotices notices, RecallRuns runs)
    {
        if (notices.Find(id) is not { } notice)
            return TypedResults.NotFound();
        runs.Of(notice)?.Stop();
        return Answer.SeeOther($"/recall/{id}");
    }

    private static IResult Paper(string id, string name, KeptNotices notices) => Answer.PdfIn(notices.Find(id)?.PaperFolder, name);

    private static IResult Papers(string id, KeptNotices notices) => Answer.Zip(notices.Find(id)?.PaperFolder, "papers.zip");

    private static IResult Record(string id, KeptNotices notices) =>
        notices.Find(id)?.SweepRecords is [var path, ..]
            ? TypedResults.PhysicalFile(path, "application/json", Path.GetFileName(path))
            : TypedResults.NotFound();
}
