using System.Reflection;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>The style sheet and the script, which stand in the program itself.</summary>
internal static class AssetEndpoints
{
    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        ["workbench.css"] = "text/css; charset=utf-8",
        ["workbench.js"] = "text/javascript; charset=utf-8",
    };

    public static void Map(IEndpointRouteBuilder pages) =>
        pages.MapGet("/assets/{name}", IResult (string name) =>
            Types.TryGetValue(name, out var type)
            && Assembly.GetExecutingAssembly().GetManifestResourceStream($"assets/{name}") is { } content
                ? TypedResults.Stream(content, type)
                : TypedResults.NotFound()
        );
}
