using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook;
using ExamDocs.UseCases.Outputs;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of a capture workbook.</summary>
/// <param name="OutFile">The workbook to write, as the user typed it.</param>
/// <param name="Categories">Ids of the categories; empty for all, or for those of the record.</param>
/// <param name="From">An earlier record to fill in from; null for empty sheets.</param>
/// <param name="WithAnswers">Fill in its answers too, not only what still holds at the next visit.</param>
public sealed record CaptureRequest(string OutFile, IReadOnlyList<string> Categories, string? From, bool WithAnswers)
{
    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;

    /// <summary>The categories there are.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    /// <summary>The register whose models and people are filled in, and the day on which it is looked at; null for none.</summary>
    public (string Place, LocalDate Today)? Known { get; init; }

    /// <summary>The register to fill in from instead of a record; null for none.</summary>
    public FromRegister? Register { get; init; }

    /// <summary>Tag of the language of a form; a workbook is in English.</summary>
    public string Language { get; init; } = "en";
}

/// <summary>What a next visit is prepared from where a register remembers the last ones.</summary>
/// <param name="Place">The register.</param>
/// <param name="DueBefore">The last day, inclusive, on which what falls due is taken; null for everything.</param>
/// <param name="Employer">Whose kit; null where it is one employer's only.</param>
/// <param name="Today">The day on which it is looked at.</param>
public sealed record FromRegister(string Place, LocalDate? DueBefore, string? Employer, LocalDate Today);

/// <summary>Writes a workbook to record a visit in.</summary>
public static class WriteCaptureWorkbook
{
    /// <returns>Why it was not written; null where it was.</returns>
    /// <exception cref="OutputRefusedException">The workbook may not be written there.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static string? Run(CaptureRequest request)
    {
        var source = CaptureSource.Of(request, out var refused);
        if (source is null)
            return refused;
        using var buffer = new MemoryStream();
        CaptureWorkbook.Write(buffer, source.Categories, source.Record, forNextVisit: !request.WithAnswers, request.Rules, source.Firms);
        source.Outputs.Write(request.OutFile, buffer.ToArray());
        return null;
    }
}
