using ExamDocs.Core.Records;
using ExamDocs.Intake.Yard;
using ExamDocs.Intake.Yard.Wording;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Commands;

/// <summary>Writes the form in which a visit is recorded in the yard, on a phone and offline.</summary>
public static class WriteYardForm
{
    /// <param name="request">As for a workbook. Answers are never filled in, whatever it says.</param>
    /// <returns>Why it was not written; null where it was.</returns>
    /// <exception cref="OutputRefusedException">The form may not be written there.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static string? Run(CaptureRequest request)
    {
        var source = CaptureSource.Of(request, out var refused);
        if (source is null)
            return refused;
        if (WithoutDay(source.Record) is { } examination)
            return $"an examination of {examination.Item ?? "an item without an id"} has no day: record it first. Without it, the "
                + "form would count its answers as those of the new visit";
        // Whoever finds a new item in the yard can add it, of whatever category; a choice narrows that.
        var categories = request.Categories.Count > 0 ? source.Categories : request.Rules.Categories;
        source.Outputs.Write(request.OutFile, YardForm.Write(categories, source.Record, request.Rules, YardPhrases.In(request.Language)));
        return null;
    }

    private static Examination? WithoutDay(ExaminationRecord? record) =>
        record?.Examinations.FirstOrDefault(e => e.DayAt(record.Visit) is null);
}
