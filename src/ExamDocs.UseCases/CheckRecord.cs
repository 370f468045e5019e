using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Photos;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>One input read, checked and determined.</summary>
/// <param name="File">The input as the user named it.</param>
/// <param name="Visit">Null where the input is unreadable.</param>
/// <param name="Sources">Where in the input each place of the record was typed.</param>
/// <param name="Unreadable">Why it is unreadable; null where it is not.</param>
public sealed record CheckedInput(string File, DeterminedVisit? Visit, SourceMap Sources, string? Unreadable);

/// <summary>Reads, checks and determines, and issues nothing.</summary>
public static class CheckRecord
{
    /// <param name="path">A JSON file or a workbook.</param>
    /// <param name="asOf">The day on which it is looked at.</param>
    /// <param name="rules">The categories and regimes it can name; left out, those built in.</param>
    public static CheckedInput Of(string path, LocalDate asOf, KnownRules? rules = null)
    {
        var read = ReadInput.From(path, rules);
        return new CheckedInput(path, read.Record is { } record
            ? Determine.Visit(record, [.. read.Findings, .. RecordPhotos.Check(record, FolderOf(path))], History.None, asOf, rules) : null,
            read.Sources, read.Unreadable);
    }

    /// <summary>Photos are named from the record's folder; of a folder of sheets, from that folder.</summary>
    private static string FolderOf(string path) => Directory.Exists(path) ? path : Path.GetDirectoryName(Path.GetFullPath(path))!;
}
