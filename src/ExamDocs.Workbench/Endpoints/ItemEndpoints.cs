using System.Globalization;
using ExamDocs.UseCases.Recording;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>One item of a visit that is recorded here.</summary>
internal static class ItemEndpoints
{
    /// <summary>Places along a rope that are shown before anything was read there.</summary>
    private const int MostPlaces = 60;

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/visit/{id}/item/{at:int:min(0)}", ShowAsync);
        pages.MapPost("/visit/{id}/item/{at:int:min(0)}", SaveAsync);
    }

    private static async Task<IResult> ShowAsync(
        string id,
        int at,
        HttpContext context,
        RecordingDesk recording,
        CancellationToken cancellation
    ) => await PageAsync(id, at, context, recording, new Left([], new Dictionary<string, string>(StringComparer.Ordinal)), cancellation);

    private static async Task<IResult> SaveAsync(
        string id,
        int at,
        HttpContext context,
        RecordingDesk recording,
        CancellationToken cancellation
    )
    {
        if (recording.Find(id) is not var (visit, before) || at >= before.Count("/items"))
            return TypedResults.NotFound();
        var form = await context.Request.ReadFormAsync(cancellation);
        var notSaved = recording.Change(visit, draft => new ItemFields(at).Save(draft, TypedForm.Fields(form)));
        var criteria = ItemProgress.Of(recording.Find(id)!.Value.Draft.Record, recording.Rules)[at].Category?.Criteria ?? [];
        var photosRefused = PhotoEndpoints.Save(visit, at, criteria, form, recording);
        if (notSaved.Count + photosRefused.Count > 0)
            return await PageAsync(id, at, context, recording, new Left(notSaved, photosRefused), cancellation);
        // Places that were named stay on the page until something is read there.
        var places = Named(context.Request.Query["place"].ToString(), form["place"].ToString());
        if (form["place"].ToString().Trim().Length == 0 && form["go"] == "next")
            return Answer.SeeOther(
                NextOf(ItemProgress.Of(recording.Find(id)!.Value.Draft.Record, recording.Rules), at) is { } next
                    ? string.Create(CultureInfo.InvariantCulture, $"/visit/{id}/item/{next}")
                    : $"/visit/{id}/record"
            );
        var query = places.Count == 0 ? "" : $"?place={Uri.EscapeDataString(string.Join(' ', places))}";
        var back = form[PhotoFields.Remove].ToString() is { Length: > 0 } removed ? $"#criterion-{Uri.EscapeDataString(removed)}" : "";
        return Answer.SeeOther(string.Create(CultureInfo.InvariantCulture, $"/visit/{id}/item/{at}{query}{back}"));
    }

    private static async Task<IResult> PageAsync(
        string id,
        int at,
        HttpContext context,
        RecordingDesk recording,
        Left left,
        CancellationToken cancellation
    )
    {
        if (recording.Find(id) is not var (visit, draft) || at >= draft.Count("/items"))
            return TypedResults.NotFound();
        var record = draft.Record;
        var progress = ItemProgress.Of(record, recording.Rules);
        var now = await recording.CheckedAsync(visit, cancellation);
        var last = LastFound.Of(record, progress[at].Item.Id);
        return Answer.Page<ItemPage>(
            new ItemModel(
                visit,
                at,
                new Sheet(draft, new ItemFields(at), now?.Findings ?? [], left.Fields, recording.Words),
                progress[at],
                now?.Visit?.Items.ElementAtOrDefault(at),
                last,
                ItemFields.Places(draft, at, last, Named(context.Request.Query["place"].ToString())),
                NextOf(progress, at),
                [.. progress.Where((_, n) => n != at).Select(p => p.Item.Id).OfType<string>()],
                recording.Rules.Categories,
                recording.Words
            )
            {
                PhotosRefused = left.Photos,
            },
            left.Fields.Count > 0 ? StatusCodes.Status409Conflict
                : left.Photos.Count > 0 ? StatusCodes.Status422UnprocessableEntity
                : StatusCodes.Status200OK
        );
    }

    /// <summary>The next item that is not done, after this one and then from the first; null where all are.</summary>
    private static int? NextOf(IReadOnlyList<ItemProgress> items, int at) =>
        Enumerable
            .Range(1, Math.Max(0, items.Count - 1))
            .Select(n => (at + n) % items.Count)
            .Where(n => items[n] is { IsDone: false, IsAway: false })
            .Select(n => (int?)n)
            .FirstOrDefault();

    /// <summary>What came back of the page and was not saved.</summary>
    private sealed record Left(IReadOnlyList<NotSaved> Fields, IReadOnlyDictionary<string, string> Photos);

    private static IReadOnlyList<string> Named(params string[] typed) =>
        [
            .. typed
                .SelectMany(t => t.Split([' ', ';', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
                .Distinct(StringComparer.Ordinal)
                .Take(MostPlaces),
        ];
}
