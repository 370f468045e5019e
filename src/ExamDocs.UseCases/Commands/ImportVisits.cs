using ExamDocs.Core.Regimes;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Takes records of earlier visits into the register, so that they are history to those that follow. Issues nothing.</summary>
public static class ImportVisits
{
    /// <param name="paths">Records as <see cref="CheckRecord.All"/> takes them, and what an export wrote.</param>
    /// <param name="place">The register; made where there is none.</param>
    /// <param name="today">The day of the import.</param>
    /// <param name="rules">The categories and regimes they can name.</param>
    /// <exception cref="IOException">The register cannot be written.</exception>
    public static ImportResult Run(IReadOnlyList<string> paths, string place, LocalDate today, KnownRules rules)
    {
        var read = paths.SelectMany(FolderOfWorkbooks.InputsOf).Select(path => new ReadVisits(path, Read(path, rules))).ToList();
        if (read.Exists(v => v.Unreadable is not null))
            return new ImportResult(DecideRun.Check(read, null, today, rules), 0, 0);
        using var register = DocumentRegister.Open(place, today);
        // The earlier visit first. Visits of one day stay in the order in which they were named: they may be versions of one record, of
        // which the last counts.
        read = [.. read.OrderBy(v => v.Read.Record!.Visit.ExaminedOn ?? LocalDate.MinIsoValue)];
        var run = DecideRun.Remember(read, register, today, rules);
        var added = run.Numbers.Count(n => n.IsNew);
        return new ImportResult(run.Inputs, added, run.Inputs.Count - added) { Remarks = run.Remarks(register) };
    }

    /// <summary>JSON may come from an export, which also holds what was found at the first reading. Photos are not looked for.</summary>
    private static ReadResult Read(string path, KnownRules rules)
    {
        if (
            !string.Equals(Path.GetExtension(path), ".json", StringComparison.OrdinalIgnoreCase)
            || new FileInfo(path) is not { Exists: true, Length: > 0 and <= JsonRecordReader.MaxBytes }
        )
            return ReadInput.From(path, rules);
        try
        {
            return EmbeddedRecord.Read(File.ReadAllBytes(path), path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return ReadInput.Refuse(path, "the file cannot be opened: " + e.Message);
        }
    }
}
