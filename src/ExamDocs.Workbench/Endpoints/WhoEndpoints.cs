using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>Who works here: asked once, changed whenever.</summary>
internal static class WhoEndpoints
{
    private const int Longest = 300;

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/who", (Who who, WorkbenchRequest request) => Show(who.Now, [], request));
        pages.MapPost("/who", KeepAsync);
    }

    private static IResult Show(Particulars who, IReadOnlyList<string> faults, WorkbenchRequest request) =>
        Answer.Page<WhoPage>(
            new WhoModel(
                who,
                request.Register.Shown,
                WorkbenchWords.In(who.Language).Missing(request.Register),
                faults,
                WorkbenchWords.In(who.Language)
            ),
            faults.Count == 0 ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
        );

    private static async Task<IResult> KeepAsync(HttpContext context, Who who, WorkbenchRequest request)
    {
        var form = await context.Request.ReadFormAsync();
        string Typed(string name) => form[name].ToString().Trim() is { Length: <= Longest } text ? text : form[name].ToString()[..Longest];
        var said = new Particulars(
            Typed("name"),
            Typed("qualifications"),
            Typed("address"),
            Typed("firm"),
            Typed("contact"),
            Typed("language")
        );
        var faults = who.Keep(said);
        return faults.Count == 0 ? Answer.SeeOther("/") : Show(said, faults, request);
    }
}
