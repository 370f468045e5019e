using ExamDocs.UseCases.Commands;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>The desk: what lies on it, and what is dropped on it.</summary>
internal static class DeskEndpoints
{
    /// <summary>Files in one drop.</summary>
    private const int Most = 60;

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/", (DeskFolder desk, Who who, WorkbenchRequest request) => Show(desk, who, request, null));
        pages.MapPost("/bring-in", BringInAsync);
    }

    /// <param name="desk">What lies there.</param>
    /// <param name="who">Who works here.</param>
    /// <param name="request">What the workbench was opened with.</param>
    /// <param name="refused">Why what was dropped was not taken; null where it was, or nothing was dropped.</param>
    /// <param name="start">What was typed to start a visit that was not started; null where nothing was.</param>
    public static IResult Show(DeskFolder desk, Who who, WorkbenchRequest request, string? refused, StartTyped? start = null)
    {
        if (who.IsUnknown)
            return Answer.SeeOther("/who");
        var (visits, words) = (desk.Visits, WorkbenchWords.In(who.Now.Language));
        return Answer.Page<DeskPage>(
            new DeskModel(visits, request.Register.Shown, words.Missing(request.Register), refused, words)
            {
                Drafts = visits.Where(v => v.Draft is not null).ToDictionary(v => v.Id, v => Called(v, words), StringComparer.Ordinal),
                Start = start,
            },
            refused is null && start is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
        );
    }

    /// <summary>One draft that cannot be read must not hide what lies beside it.</summary>
    private static string Called(DeskVisit visit, WorkbenchWords words)
    {
        try
        {
            return words.VisitCalled(Drafts.Of(visit)!);
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            return words.VisitRecordedHere;
        }
    }

    private static async Task<IResult> BringInAsync(
        HttpContext context,
        DeskFolder desk,
        Who who,
        WorkbenchRequest request,
        CancellationToken cancellation
    )
    {
        var (files, refused) = await DroppedFiles.OfAsync(context, Most, WorkbenchWords.In(who.Now.Language), cancellation);
        if (refused is not null)
            return Show(desk, who, request, refused);
        var visit = await desk.AddAsync(files, cancellation);
        var isList = visit.List is { } list && OpenedList.MayBe(list, request.Rules);
        return Answer.SeeOther(isList ? $"/visit/{visit.Id}/list" : $"/visit/{visit.Id}");
    }
}
