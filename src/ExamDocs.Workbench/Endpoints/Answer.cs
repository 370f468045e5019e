using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>The answers that endpoints give.</summary>
internal static class Answer
{
    /// <summary>A page with its one model.</summary>
    public static IResult Page<TPage>(object model, int status = StatusCodes.Status200OK)
        where TPage : IComponent => new RazorComponentResult<TPage>(new { Model = model }) { StatusCode = status };

    /// <summary>After something was done: the page that shows it, so that loading it again does nothing twice.</summary>
    public static IResult SeeOther(string path) => new SeeOtherResult(path);

    /// <summary>A file to be shown in the browser.</summary>
    public static IResult Pdf(string path) => TypedResults.PhysicalFile(path, "application/pdf");

    private sealed class SeeOtherResult(string path) : IResult
    {
        public Task ExecuteAsync(HttpContext context)
        {
            context.Response.StatusCode = StatusCodes.Status303SeeOther;
            context.Response.Headers.Location = path;
            return Task.CompletedTask;
        }
    }
}
