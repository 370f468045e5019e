using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Outputs;

/// <summary>The files that a run reads, by the files and folders that the user named.</summary>
internal static class ReadFiles
{
    private static readonly string[] RuleFolders = ["regimes", "categories"];

    /// <param name="named">What is not there, or is no file, for example a document number, is left out.</param>
    /// <returns>Each with what named it.</returns>
    public static IEnumerable<(string File, string Named)> Of(IEnumerable<string> named) =>
        named.SelectMany(n => In(n).Select(file => (file, n)));

    private static IEnumerable<string> In(string named) =>
        File.Exists(named) ? [named]
        : Directory.Exists(named) ? Directory.EnumerateFiles(named).Where(ReadInput.IsCsv).Concat(Rules(named))
        : [];

    /// <summary>What is read of a folder of the user's own rules.</summary>
    private static IEnumerable<string> Rules(string folder) =>
        RuleFolders
            .Select(kind => Path.Combine(folder, kind))
            .Where(Directory.Exists)
            .SelectMany(kind => Directory.EnumerateFiles(kind, "*.json"))
            .Append(Path.Combine(folder, "headings.json"))
            .Where(File.Exists);
}
