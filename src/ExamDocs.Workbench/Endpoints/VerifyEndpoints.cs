using ExamDocs.UseCases.Verifying;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>Verifying documents that are dropped; nothing of them is kept.</summary>
internal static class VerifyEndpoints
{
    private const int Most = 20;

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/verify", (Who who) => Show([], null, who));
        pages.MapPost("/verify", VerifyAsync);
    }

    private static IResult Show(IReadOnlyList<VerifiedFile> verified, string? refused, Who who) =>
        Answer.Page<VerifyPage>(new VerifyModel(verified, refused, WorkbenchWords.In(who.Now.Language)));

    private static async Task<IResult> VerifyAsync(HttpContext context, WorkbenchRequest request, Who who, CancellationToken cancellation)
    {
        var (files, refused) = await DroppedFiles.OfAsync(context, Most, WorkbenchWords.In(who.Now.Language), cancellation);
        if (refused is not null)
            return Show([], refused, who);
        var folder = Directory.CreateTempSubdirectory("examdocs-verify-");
        try
        {
            var visit = new DeskVisit("verify", folder.FullName);
            await visit.AddRoundAsync(files, cancellation);
            var verified = await VerifyDocuments.RunAsync(
                new VerifyRequest
                {
                    Files = visit.Inputs,
                    RegisterPath = request.Register.Exists ? request.Register.Place : null,
                    Rules = request.Rules,
                    Now = request.Now(),
                },
                cancellation
            );
            return Show([.. verified.Select(v => v with { File = Path.GetFileName(v.File) })], null, who);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
