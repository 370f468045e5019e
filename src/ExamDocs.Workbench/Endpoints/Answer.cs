using System.IO.Compression;
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

    /// <summary>
    /// A file that lies in the folder itself: its name is compared with the names that are there, and never made a path.
    /// </summary>
    public static IResult PdfIn(string? folder, string name) =>
        folder is not null
        && Directory.Exists(folder)
        && Path.GetExtension(name).Equals(".pdf", StringComparison.OrdinalIgnoreCase)
        && Directory.EnumerateFiles(folder).FirstOrDefault(f => string.Equals(Path.GetFileName(f), name, StringComparison.Ordinal))
            is { } path
            ? Pdf(path)
            : TypedResults.NotFound();

    /// <summary>All files of a folder.</summary>
    public static IResult Zip(string? folder, string name)
    {
        if (folder is null || !Directory.Exists(folder))
            return TypedResults.NotFound();
        var files = Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).ToList();
        return TypedResults.Stream(
            async to =>
            {
                await using var zip = await ZipArchive.CreateAsync(to, ZipArchiveMode.Create, leaveOpen: true, entryNameEncoding: null);
                foreach (var file in files)
                    await zip.CreateEntryFromFileAsync(file, Path.GetFileName(file), CompressionLevel.NoCompression);
            },
            "application/zip",
            name
        );
    }

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
