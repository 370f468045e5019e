using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company.Packing;
using ExamDocs.UseCases.Reading;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>An audit pack: what it is asked to show, how far it is, what is missing, and its two files.</summary>
internal static class PackEndpoints
{
    private const int MostFiles = 200;

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/all", (Who who) => Answer.Page<AllKitPage>(WorkbenchWords.In(who.Now.Language)));
        pages.MapGet("/pack", (PackRuns runs, WorkbenchRequest request, Who who) => Start(runs, request, who, Usual(request, who), null));
        pages.MapPost("/pack", MakeAsync);
        pages.MapGet("/pack/{id}", Show);
        pages.MapPost("/pack/{id}/stop", Stop);
        pages.MapPost("/pack/{id}/remove", Remove);
        pages.MapGet("/pack/{id}/pack.zip", (string id, PackRuns runs) => File(runs.Find(id)?.ZipFile, "application/zip"));
        pages.MapGet("/pack/{id}/reading-copy.pdf", (string id, PackRuns runs) => File(runs.Find(id)?.CopyFile, "application/pdf"));
    }

    private static AskedPack Usual(WorkbenchRequest request, Who who) =>
        new("", "", "", LocalDatePattern.Iso.Format(request.Today()), who.Now.Language);

    private static IResult Start(PackRuns runs, WorkbenchRequest request, Who who, AskedPack asked, string? refused)
    {
        var words = WorkbenchWords.In(who.Now.Language);
        var employers = request.Register.Exists ? BuildPack.Employers(request.Register.Place, request.Today()) : [];
        return Answer.Page<PackPage>(
            new PackPageModel(employers, asked, runs.All, words.Missing(request.Register), refused, words),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity
        );
    }

    private static async Task<IResult> MakeAsync(
        HttpContext context,
        PackRuns runs,
        WorkbenchRequest request,
        Who who,
        CancellationToken cancellation
    )
    {
        var form = await context.Request.ReadFormAsync(cancellation);
        var words = WorkbenchWords.In(who.Now.Language);
        string Typed(string name) => form[name].ToString().Trim();
        var asked = new AskedPack(Typed("employer"), Typed("premises"), Typed("items"), Typed("as-of"), Typed("language"));
        var evidence = form.Files.Where(f => f.Length > 0).ToList();
        IResult Refused(string why) => Start(runs, request, who, asked, why);
        if (words.Missing(request.Register) is { } missing)
            return Refused(missing);
        if (LocalDatePattern.Iso.Parse(asked.AsOf) is not { Success: true, Value: var asOf })
            return Refused(words.NotADay(asked.AsOf));
        if (evidence.Count > MostFiles)
            return Refused(words.TooManyFiles(MostFiles));
        if (EvidenceName.Objection([.. evidence.Select(f => f.FileName)]) is { } objection)
            return Refused(words.Say(objection));
        var pack = runs.Start(
            Question(asked, asOf, request, who),
            [.. evidence.Select(f => new DroppedFile(f.FileName, f.OpenReadStream))],
            who.Style(request.Now(), asked.Language)
        );
        return Answer.SeeOther($"/pack/{pack.Id}");
    }

    private static PackQuestion Question(AskedPack asked, LocalDate asOf, WorkbenchRequest request, Who who) =>
        new(asked.Employer, asOf, request.Today())
        {
            Premises = asked.Premises.Length == 0 ? null : asked.Premises,
            Items = asked.Items.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries),
            Language = who.Style(request.Now(), asked.Language).Language,
            Rules = request.Rules,
        };

    private static IResult Show(string id, PackRuns runs, Who who) =>
        runs.Find(id) is { } pack
            ? Answer.Page<PackedPage>(new PackedPageModel(pack, WorkbenchWords.In(who.Now.Language)))
            : TypedResults.NotFound();

    private static IResult Stop(string id, PackRuns runs)
    {
        if (runs.Find(id) is not { } pack)
            return TypedResults.NotFound();
        pack.Run.Stop();
        return Answer.SeeOther($"/pack/{id}");
    }

    private static IResult Remove(string id, PackRuns runs)
    {
        if (runs.Find(id) is not { } pack)
            return TypedResults.NotFound();
        runs.Remove(pack);
        return Answer.SeeOther("/pack");
    }

    private static IResult File(string? path, string kind) =>
        path is not null && System.IO.File.Exists(path)
            ? TypedResults.PhysicalFile(path, kind, Path.GetFileName(path))
            : TypedResults.NotFound();
}
