using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Joining;
using ExamDocs.Documents.Signing;
using ExamDocs.Templates.Wording;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>What the user asks of check sheets.</summary>
public sealed record CheckSheetRequest
{
    /// <summary>The record of the last visit.</summary>
    public required string From { get; init; }

    /// <summary>The pile to print; the single sheets go beside it.</summary>
    public required string OutFile { get; init; }

    /// <summary>Ids of the categories; empty for every item.</summary>
    public IReadOnlyList<string> Categories { get; init; } = [];

    public required string RegisterPath { get; init; }

    /// <summary>Language of the sheets.</summary>
    public Language Language { get; init; } = Language.English;

    /// <summary>Who signs electronically what is issued now; null for nobody.</summary>
    public DocumentSigner? Signer { get; init; }

    /// <summary>Day of issue.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The categories and regimes that the record can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;
}

/// <summary>What came of it.</summary>
/// <param name="Sheets">The sheets of the pile, in its order.</param>
/// <param name="Refused">Why nothing was printed; null where it was, or where there was nothing to print.</param>
/// <param name="Unprintable">Sentences about sheets with characters that no installed font has; those are held back.</param>
/// <param name="Failure">Why the machinery stopped; null where it did not.</param>
public sealed record CheckSheetResult(IReadOnlyList<Issued> Sheets, string? Refused, IReadOnlyList<string> Unprintable, string? Failure);

/// <summary>Prints papers on which the next visit is written down by hand, from the record of the last one.</summary>
public static class PrintCheckSheets
{
    /// <exception cref="IOException">The register or a file cannot be written.</exception>
    public static async Task<CheckSheetResult> RunAsync(CheckSheetRequest request, CancellationToken cancellation = default)
    {
        EarlierRecord.Read(request.From, request.Rules, out var refused);
        if ((EarlierRecord.Unknown(request.Categories, request.Rules) ?? refused) is { } why)
            return new CheckSheetResult([], why, [], null);
        var input = CheckRecord.Of(request.From, request.Today, request.Rules);
        if (input.Visit is not { } visit)
            return new CheckSheetResult([], $"{request.From}: unreadable: {input.Unreadable}", [], null);

        await using var run = RegisteredRun.Open(request.RegisterPath, Path.GetDirectoryName(Path.GetFullPath(request.OutFile))!, request.Today, request.Rules);
        var press = run.Press;
        var jobs = ComposeDocuments.CheckSheets(visit).Where(j => IsChosen(j.Items[0], request)).Select(j => j with { Language = request.Language, Signer = request.Signer });
        var failure = await press.RunAsync([.. jobs], cancellation);
        if (failure is null && press.Documents.Count > 0)
            WholeFile.Write(request.OutFile, JoinedPages.Of([.. press.Documents.Select(d => press.Content(d.Document))], request.Language.Words.CheckSheet.Pile));
        return new CheckSheetResult(press.Documents, null, press.Unprintable, failure);
    }

    private static bool IsChosen(DeterminedItem item, CheckSheetRequest request) =>
        request.Categories.Count == 0 || request.Categories.Contains(item.Category?.Id, StringComparer.Ordinal);
}
