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
            return Answer.Page<FindPage>(new FindModel(asked, new([], 0, IsMarked: false), words.Missing(request.Register), words));
        var found = FindItems.Of(request.Register.Place, asked, request.Today());
        return Answer.Page<FindPage>(
            new FindModel(asked, found, null, words) { SpeltLike = found.IsMarked ? [] : SpeltLike(request, asked) }
        );
    }

    private static async Task<IResult> ReturnsAsync(HttpContext context, WorkbenchRequest request, Who who, FoundMemory memory)
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
        var missing = words.Missing(request.Register);
        var items = missing is null
            ? FindItems.ByMarkings(request.Register.Place, markings, request.Today(), memory)
            : [.. markings.Select(_ => Array.Empty<FoundItem>())];
        ReturnedItem Returned(string m, IReadOnlyList<FoundItem> of) =>
            new(m, of) { SpeltLike = of.Count > 0 || missing is not null ? [] : SpeltLike(request, m, memory) };
        return Answer.Page<ReturnsPage>(new ReturnsModel([.. markings.Zip(items, Returned)], string.Join('\n', markings), missing, words));
    }

    private static IReadOnlyList<FoundItem> SpeltLike(WorkbenchRequest request, string marking, FoundMemory? memory = null) =>
        FindItems.SpeltLike(request.Register.Place, marking, request.Today(), memory);
}
