using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Recording;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using NodaTime.Text;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>A visit that is recorded here: starting it, its particulars, its list of items.</summary>
internal static class RecordEndpoints
{
    /// <summary>Particulars of an item that is added; the rest is typed on its own page.</summary>
    private static readonly string[] OfNewItem = ["id", "category", "description", "maker", "model", "serial"];

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapPost("/start", StartAsync);
        pages.MapGet("/visit/{id}/record", ListAsync);
        pages.MapPost("/visit/{id}/add", AddAsync);
        pages.MapGet("/visit/{id}/particulars", ParticularsAsync);
        pages.MapPost("/visit/{id}/particulars", KeepAsync);
    }

    private static async Task<IResult> StartAsync(
        HttpContext context,
        DeskFolder desk,
        Who who,
        WorkbenchRequest request,
        CancellationToken cancellation
    )
    {
        var form = await context.Request.ReadFormAsync(cancellation);
        var (words, today, place) = (WorkbenchWords.In(who.Now.Language), request.Today(), request.Register.Place);
        var typed = new StartTyped(form["from"] == "register", form["due-by"].ToString().Trim(), form["employer"].ToString().Trim(), null);
        var dueBy = LocalDatePattern.Iso.Parse(typed.DueBy);
        IResult Again(string why) => DeskEndpoints.Show(desk, who, request, null, typed with { Refused = why });
        if (typed is { FromRegister: true, DueBy.Length: > 0 } && !dueBy.Success)
            return Again(words.NotADay(typed.DueBy));
        var due = typed.FromRegister
            ? new FromRegister(place, dueBy.Success ? dueBy.Value : null, typed.Employer.Length == 0 ? null : typed.Employer, today)
            : null;
        var (draft, refused) = StartVisit.Run(new StartVisitRequest(due, place, today, Examiner(who)));
        if (draft is null)
            return Again(words.NotStarted(refused!));
        return await OpenAsync(draft, desk, cancellation);
    }

    /// <summary>Whoever works here, as the examiner of a visit.</summary>
    public static Person Examiner(Who who)
    {
        var now = who.Now;
        return new Person
        {
            Name = now.Name,
            Address = now.Address,
            Qualifications = now.Qualifications,
        };
    }

    /// <summary>Puts a visit that was started on the desk, and opens its particulars.</summary>
    public static async Task<IResult> OpenAsync(RecordDraft draft, DeskFolder desk, CancellationToken cancellation)
    {
        var visit = await desk.AddAsync(
            [new DroppedFile(DeskVisit.DraftName, () => new MemoryStream(draft.Write())) { IsDraft = true }],
            cancellation
        );
        return Answer.SeeOther($"/visit/{visit.Id}/particulars");
    }

    private static async Task<IResult> ListAsync(string id, RecordingDesk recording, CancellationToken cancellation) =>
        await ShowListAsync(id, recording, new Dictionary<string, string>(StringComparer.Ordinal), null, cancellation);

    private static async Task<IResult> ShowListAsync(
        string id,
        RecordingDesk recording,
        IReadOnlyDictionary<string, string> typed,
        string? refused,
        CancellationToken cancellation
    )
    {
        if (recording.Find(id) is not var (visit, draft))
            return TypedResults.NotFound();
        var rules = recording.Rules;
        var checkedInput = await recording.CheckedAsync(visit, cancellation);
        return Answer.Page<RecordPage>(
            new RecordModel(
                visit,
                draft,
                ItemProgress.Of(draft.Record, rules),
                checkedInput?.Visit?.Items ?? [],
                rules,
                typed,
                refused,
                recording.Words
            ),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
        );
    }

    private static async Task<IResult> AddAsync(string id, HttpContext context, RecordingDesk recording, CancellationToken cancellation)
    {
        if (recording.Find(id) is not var (visit, _))
            return TypedResults.NotFound();
        var form = await context.Request.ReadFormAsync(cancellation);
        var typed = OfNewItem.ToDictionary(m => m, m => form[m].ToString().Trim(), StringComparer.Ordinal);
        var words = recording.Words;
        var (at, refused) = recording.Change(visit, draft => Added(draft, typed, words));
        return refused is null
            ? Answer.SeeOther(string.Create(CultureInfo.InvariantCulture, $"/visit/{id}/item/{at}?new"))
            : await ShowListAsync(id, recording, typed, refused, cancellation);
    }

    private static (RecordDraft Draft, (int At, string? Refused) Told) Added(
        RecordDraft draft,
        Dictionary<string, string> typed,
        WorkbenchWords words
    )
    {
        if (typed["id"].Length == 0 || draft.IndexOf("/items", "id", typed["id"]) is not null)
            return (draft, (0, words.Because(NotSavedBecause.IdIsNotItsOwn)));
        if (typed["category"].Length == 0)
            return (draft, (0, words.ChooseACategory));
        var at = draft.Count("/items");
        var added = typed.Aggregate(draft, (d, t) => d.With(FormattableString.Invariant($"/items/{at}/{t.Key}"), t.Value));
        return (added, (at, null));
    }

    private static async Task<IResult> ParticularsAsync(string id, RecordingDesk recording, CancellationToken cancellation) =>
        await ShowParticularsAsync(id, recording, [], cancellation);

    private static async Task<IResult> ShowParticularsAsync(
        string id,
        RecordingDesk recording,
        IReadOnlyList<NotSaved> notSaved,
        CancellationToken cancellation
    )
    {
        if (recording.Find(id) is not var (visit, draft))
            return TypedResults.NotFound();
        var findings = (await recording.CheckedAsync(visit, cancellation))?.Findings ?? [];
        return Answer.Page<ParticularsPage>(
            new ParticularsModel(
                visit,
                new Sheet(draft, new VisitFields(), findings, notSaved, recording.Words),
                recording.Rules,
                recording.Words
            ),
            notSaved.Count == 0 ? StatusCodes.Status200OK : StatusCodes.Status409Conflict
        );
    }

    private static async Task<IResult> KeepAsync(string id, HttpContext context, RecordingDesk recording, CancellationToken cancellation)
    {
        if (recording.Find(id) is not var (visit, _))
            return TypedResults.NotFound();
        var form = await context.Request.ReadFormAsync(cancellation);
        var notSaved = recording.Change(visit, draft => new VisitFields().Save(draft, TypedForm.Fields(form)));
        if (notSaved.Count > 0)
            return await ShowParticularsAsync(id, recording, notSaved, cancellation);
        return Answer.SeeOther(form["go"] == "next" ? $"/visit/{id}/record" : $"/visit/{id}/particulars");
    }
}
