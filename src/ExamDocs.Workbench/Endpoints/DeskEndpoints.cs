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

    private static IResult Show(DeskFolder desk, Who who, WorkbenchRequest request, string? refused) =>
        who.IsUnknown
            ? Answer.SeeOther("/who")
            : Answer.Page<DeskPage>(
                new DeskModel(
                    desk.Visits,
                    request.Register.Shown,
                    request.Register.Exists ? null : WorkbenchWords.In(who.Now.Language).Say(request.Register.Missing),
                    refused,
                    WorkbenchWords.In(who.Now.Language)
                ),
                refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
            );

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
        return Answer.SeeOther($"/visit/{visit.Id}");
    }
}
