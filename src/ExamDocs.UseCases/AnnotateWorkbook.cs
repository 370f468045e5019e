using ExamDocs.Intake.Annotating;

namespace ExamDocs.UseCases;

/// <summary>Gives the user's workbook back with each finding as a note on its cell.</summary>
public static class AnnotateWorkbook
{
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
        if (AnnotatedWorkbook.Write(source, copy, visit.Findings, input.Sources) is { } why)
            return $"{input.File}: no annotated copy: {why}";
        WholeFile.Write(outFile, copy.GetBuffer().AsSpan(0, (int)copy.Length));
        return null;
    }

    /// <summary>The file that a path leads to, with every link on the way followed.</summary>
    private static string RealPath(string path)
    {
        var full = Path.GetFullPath(path);
        if (new FileInfo(full).ResolveLinkTarget(returnFinalTarget: true) is { } target)
            return RealPath(target.FullName);
        return Path.GetDirectoryName(full) is { } folder ? Path.Combine(RealFolder(folder), Path.GetFileName(full)) : full;
    }

    private static string RealFolder(string folder) =>
        new DirectoryInfo(folder).ResolveLinkTarget(returnFinalTarget: true) is { } target ? RealFolder(target.FullName)
        : Path.GetDirectoryName(folder) is { } parent ? Path.Combine(RealFolder(parent), Path.GetFileName(folder))
        : folder;
}
