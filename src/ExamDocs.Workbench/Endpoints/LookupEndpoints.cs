using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>Finding items, and the returns desk.</summary>
internal static class LookupEndpoints
{
    /// <summary>Markings on one list of returns.</summary>
    private const int MostReturns = 500;

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/find", Find);
        pages.MapGet("/returns", (Who who) =>
            Answer.Page<ReturnsPage>(new ReturnsModel([], "", null, WorkbenchWords.In(who.Now.Language)))
        );
        pages.MapPost("/returns", ReturnsAsync);
    }

    private static IResult Find(HttpContext context, WorkbenchRequest request, Who who)
    {
        var (words, asked) = (WorkbenchWords.In(who.Now.Language), context.Request.Query["q"].ToString().Trim());
        if (asked.Length == 0 || !request.Register.Exists)
            return Answer.Page<FindPage>(new FindModel(asked, [], 0, request.Register.Exists ? null : words.Say(request.Register.Missing), words));
        var (place, today) = (request.Register.Place, request.Today());
        var exact = FindItems.ByMarking(place, asked, today);
        var (items, inAll) = exact.Count > 0 ? (exact, exact.Count) : FindItems.ByWords(place, asked, today);
        return Answer.Page<FindPage>(new FindModel(asked, items, inAll, null, words));
    }

    private static async Task<IResult> ReturnsAsync(HttpContext context, WorkbenchRequest request, Who who)
    {
        var words = WorkbenchWords.In(who.Now.Language);
        var form = await context.Request.ReadFormAsync();
        var (before, scanned) = (form["list"].ToString(), form["scanned"].ToString().Trim());
        var markings = before.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).ToList();
        // A label's code has several lines, of which the first says which item it is.
        if (scanned.ReplaceLineEndings("\n").Split('\n')[0].Trim() is { Length: > 0 } marking)
            markings.Add(marking);
        if (markings.Count > MostReturns)
            return Answer.Page<ReturnsPage>(new ReturnsModel([], before, words.ListIsFull(MostReturns), words));
        var (place, today) = (request.Register.Place, request.Today());
        var known = request.Register.Exists;
        return Answer.Page<ReturnsPage>(
            new ReturnsModel(
                [.. markings.Select(m => new ReturnedItem(m, known ? FindItems.ByMarking(place, m, today) : []))],
                string.Join('\n', markings),
                known ? null : words.Say(request.Register.Missing),
                words
            )
        );
    }
}
