using ExamDocs.Intake.Yard;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Http;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>Takes the files out of a form.</summary>
internal static class DroppedFiles
{
    /// <returns>The files, and a sentence why they are not taken; null where they are.</returns>
    public static async Task<(IReadOnlyList<DroppedFile> Files, string? Refused)> OfAsync(
        HttpContext context,
        int most,
        WorkbenchWords words,
        CancellationToken cancellation
    )
    {
        var form = await context.Request.ReadFormAsync(cancellation);
        var files = form.Files.Where(f => f.Length > 0).ToList();
        return files switch
        {
            [] => ([], words.NothingDropped),
            _ when files.Count > most => ([], words.TooManyFiles(most)),
            _ when files.Find(f => !SafeName.IsOfAKind(f.FileName)) is { } other => ([], words.NotOfAKind(other.FileName)),
            _ when files.Select(WhyNot).FirstOrDefault(why => why is not null) is { } why => ([], why),
            _ => ([.. files.Select(f => new DroppedFile(f.FileName, f.OpenReadStream))], null),
        };
    }

    private static string? WhyNot(IFormFile file)
    {
        if (!SafeName.IsArchive(file.FileName))
            return null;
        using var archive = file.OpenReadStream();
        return YardArchive.WhyNot(archive) is { } why ? $"{file.FileName}: {why}" : null;
    }
}
