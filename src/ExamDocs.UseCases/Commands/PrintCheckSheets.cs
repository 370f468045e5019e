using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Joining;
using ExamDocs.Templates.CheckSheet.Wording;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Commands;

/// <summary>Prints papers on which the next visit is written down by hand, from the record of the last one.</summary>
public static class PrintCheckSheets
{
    /// <exception cref="IOException">The register or a file cannot be written.</exception>
    /// <exception cref="OutputRefusedException">The pile may not be written there; nothing was issued.</exception>
    public static async Task<CheckSheetResult> RunAsync(CheckSheetRequest request, CancellationToken cancellation = default)
    {
        var outputs = request.Outputs.For([request.From], request.RegisterPath);
        outputs.Require(request.OutFile);
        EarlierRecord.Read(request.From, request.Rules, out var refused);
        if ((EarlierRecord.Unknown(request.Categories, request.Rules) ?? refused) is { } why)
            return new CheckSheetResult([], why, [], null);
        var input = CheckRecord.Of(request.From, request.Today, request.Rules);
        if (input.Visit is not { } visit)
            return new CheckSheetResult([], $"{request.From}: unreadable: {input.Unreadable}", [], null);

        await using var run = RegisteredRun.Open(
            request.RegisterPath,
            folder: null,
            request.Today,
            request.Rules,
            browser: request.Browser
        );
        var prints = run.Prints;
        var jobs = ComposeDocuments.CheckSheets(visit).Where(j => IsChosen(j.Items[0], request)).Select(j => j.In(request.Style));
        var failure = await prints.RunAsync([.. jobs], cancellation);
        if (failure is null && prints.Documents.Count > 0)
            outputs.Write(
                request.OutFile,
                JoinedPages.Of(
                    [.. prints.Documents.Select(d => prints.Content(d.Document))],
                    CheckSheetPhrases.Languages.In(request.Style.Language).TitleOfSeveral
                )
            );
        return new CheckSheetResult(prints.Documents, null, prints.Unprintable, failure);
    }

    private static bool IsChosen(DeterminedItem item, CheckSheetRequest request) =>
        request.Categories.Count == 0 || request.Categories.Contains(item.Category?.Id, StringComparer.Ordinal);
}
