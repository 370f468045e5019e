using ExamDocs.Core.Criteria;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>The photos of an item that is recorded here.</summary>
internal static class PhotoEndpoints
{
    public static void Map(IEndpointRouteBuilder pages) => pages.MapGet("/visit/{id}/photo/{name}", Show);

    /// <summary>
    /// Keeps the photos that came with the page of an item, and takes off the one that is to go. A page that is out of date replaces
    /// no photo that another page added meanwhile.
    /// </summary>
    /// <returns>By criterion why its photo was not taken; empty where all were.</returns>
    public static IReadOnlyDictionary<string, string> Save(
        DeskVisit visit,
        int item,
        IReadOnlyList<Criterion> criteria,
        IFormCollection form,
        RecordingDesk recording
    )
    {
        var refused = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var criterion in criteria.Select(c => c.Id))
        {
            string? photo = null;
            if (form.Files.GetFile(PhotoFields.File(criterion)) is { Length: > 0 } file)
            {
                using var stream = file.OpenReadStream();
                var (kept, fault) = ItemPhotos.Keep(visit.Draft!, stream, file.Length, file.FileName);
                if (fault is not null)
                {
                    refused[criterion] = recording.Words.PhotoNotTaken(fault);
                    continue;
                }
                photo = kept;
            }
            else if (form[PhotoFields.Remove] != criterion)
            {
                continue;
            }
            var shown = form[PhotoFields.Shown(criterion)].ToString();
            if (!recording.Change(visit, draft => Bound(draft, item, criterion, shown, photo)))
                refused[criterion] = recording.Words.PhotoChangedMeanwhile;
        }
        return refused;
    }

    private static (RecordDraft Draft, bool IsSaved) Bound(RecordDraft draft, int item, string criterion, string shown, string? photo)
    {
        var stands = ItemPhotos.Of(draft, item, criterion);
        if (string.Equals(stands, photo ?? "", StringComparison.Ordinal))
            return (draft, true);
        return string.Equals(stands, shown, StringComparison.Ordinal)
            ? (ItemPhotos.With(draft, item, criterion, photo), true)
            : (draft, false);
    }

    /// <summary>As a picture and nothing else: the browser is told to believe the type, whatever the bytes look like.</summary>
    private static IResult Show(string id, string name, DeskFolder desk) =>
        desk.Find(id) is { Draft: { } draft } && ItemPhotos.Find(draft, name) is { } path
            ? TypedResults.PhysicalFile(path, name.EndsWith(".png", StringComparison.Ordinal) ? "image/png" : "image/jpeg")
            : TypedResults.NotFound();
}
