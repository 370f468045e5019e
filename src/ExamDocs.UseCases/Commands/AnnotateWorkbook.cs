using ExamDocs.Core.Findings;
using ExamDocs.Intake.Annotating;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>Gives the user's workbook back with each finding, and each answer that is missing, as a note on its cell.</summary>
public static class AnnotateWorkbook
{
    /// <summary>Links that lead in a circle are followed no further than this.</summary>
    private const int MostLinks = 20;

    /// <summary>Why these inputs cannot be annotated into this file; null where they can.</summary>
    /// <param name="inputs">The inputs as the user named them.</param>
    /// <param name="outFile">The copy to write.</param>
    public static string? WhyNot(IReadOnlyList<string> inputs, string outFile)
    {
        if (inputs.Count != 1)
            return "An annotated copy is made of one workbook at a time: give one input with --annotate.";
        if (Directory.Exists(inputs[0]) || !string.Equals(Path.GetExtension(inputs[0]), ".xlsx", StringComparison.OrdinalIgnoreCase))
            return $"{inputs[0]}: only a workbook (.xlsx) can be annotated.";
        return string.Equals(RealPath(inputs[0]), RealPath(outFile), StringComparison.OrdinalIgnoreCase)
            ? $"{inputs[0]}: the annotated copy cannot take the place of the workbook itself; give --annotate another name."
            : null;
    }

    /// <returns>Why it was not written; null where it was.</returns>
    /// <exception cref="IOException">The copy cannot be written; a file of that name is as it was.</exception>
    public static string? Run(CheckedInput input, string outFile)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (WhyNot([input.File], outFile) is { } refused)
            return refused;
        if (input.Visit is not { } visit)
            return $"{input.File}: unreadable: {input.Unreadable}";
        using var source = File.OpenRead(input.File);
        using var copy = new MemoryStream();
        var findings = FindingCauses.Tie([.. input.Findings, .. UnansweredCriteria.Of(visit)]).Where(f => f.FollowsFrom is null);
        if (AnnotatedWorkbook.Write(source, copy, [.. findings], input.Sources) is { } why)
            return $"{input.File}: no annotated copy: {why}";
        WholeFile.Write(outFile, copy.GetBuffer().AsSpan(0, (int)copy.Length));
        return null;
    }

    /// <summary>The file that a path leads to, whether it is there or not, with the links on the way followed.</summary>
    private static string RealPath(string path, int links = 0)
    {
        var full = Path.GetFullPath(path);
        if (Path.GetDirectoryName(full) is not { } folder)
            return full;
        var real = RealPath(folder, links);
        return links < MostLinks && new FileInfo(full).LinkTarget is { } target
            ? RealPath(Path.Combine(real, target), links + 1)
            : Path.Combine(real, Path.GetFileName(full));
    }
}
