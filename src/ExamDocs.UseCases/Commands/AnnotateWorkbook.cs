using ExamDocs.Core.Findings;
using ExamDocs.Intake.Annotating;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>Gives the user's workbook back with each finding, and each answer that is missing, as a note on its cell.</summary>
public static class AnnotateWorkbook
{
    /// <summary>Why these inputs cannot be annotated; null where they can.</summary>
    /// <param name="inputs">The inputs as the user named them.</param>
    public static string? WhyNot(IReadOnlyList<string> inputs)
    {
        if (inputs.Count != 1)
            return "An annotated copy is made of one workbook at a time: give one input with --annotate.";
        if (Directory.Exists(inputs[0]) || !string.Equals(Path.GetExtension(inputs[0]), ".xlsx", StringComparison.OrdinalIgnoreCase))
            return $"{inputs[0]}: only a workbook (.xlsx) can be annotated.";
        return null;
    }

    /// <returns>Why it was not written; null where it was.</returns>
    /// <param name="input">The workbook as checked.</param>
    /// <param name="outFile">The copy to write, as the user typed it.</param>
    /// <param name="outputs">What may be written over; left out, nothing.</param>
    /// <param name="language">Of the notes and the list; English where it is left out.</param>
    /// <exception cref="OutputRefusedException">The copy may not be written there.</exception>
    /// <exception cref="IOException">The copy cannot be written; a file of that name is as it was.</exception>
    public static string? Run(CheckedInput input, string outFile, OutputGuard? outputs = null, MessageLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (WhyNot([input.File]) is { } refused)
            return refused;
        if (input.Visit is not { } visit)
            return $"{input.File}: unreadable: {input.Unreadable}";
        using var source = File.OpenRead(input.File);
        using var copy = new MemoryStream();
        var findings = FindingCauses.Tie([.. input.Findings, .. UnansweredCriteria.Of(visit)]).Where(f => f.FollowsFrom is null);
        if (AnnotatedWorkbook.Write(source, copy, [.. findings], input.Sources, language) is { } why)
            return $"{input.File}: no annotated copy: {why}";
        (outputs ?? OutputGuard.NewFilesOnly).For([input.File], register: null).Write(outFile, copy.ToArray());
        return null;
    }
}
