using ExamDocs.Core;
using ExamDocs.Core.Criteria;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.UseCases;

/// <summary>What the user asks of a capture workbook.</summary>
/// <param name="OutFile">The workbook to write.</param>
/// <param name="Categories">Ids of the categories; empty for all, or for those of the record.</param>
/// <param name="From">An earlier record to fill in from; null for empty sheets.</param>
/// <param name="WithAnswers">Fill in its answers too, not only what still holds at the next visit.</param>
public sealed record CaptureRequest(string OutFile, IReadOnlyList<string> Categories, string? From, bool WithAnswers)
{
    /// <summary>The categories there are.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;
}

/// <summary>Writes a workbook to record a visit in.</summary>
public static class WriteCaptureWorkbook
{
    /// <returns>Why it was not written; null where it was.</returns>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static string? Run(CaptureRequest request)
    {
        string? refused = null;
        var read = request.From is null ? null : EarlierRecord.Read(request.From, request.Rules, out refused);
        if ((EarlierRecord.Unknown(request.Categories, request.Rules) ?? refused) is { } why)
            return why;
        using var buffer = new MemoryStream();
        CaptureWorkbook.Write(buffer, Chosen(request, read?.Record), read?.Record, forNextVisit: !request.WithAnswers, request.Rules);
        WholeFile.Write(request.OutFile, buffer.ToArray());
        return null;
    }

    private static IReadOnlyList<Category> Chosen(CaptureRequest request, Core.Records.ExaminationRecord? record)
    {
        if (request.Categories.Count > 0)
            return [.. request.Categories.Select(c => request.Rules.FindCategory(c)!)];
        var used = record?.Items.Select(i => i.Category).ToHashSet(StringComparer.Ordinal);
        return [.. request.Rules.Categories.Where(c => used is null || used.Contains(c.Id))];
    }
}
