namespace ExamDocs.UseCases.Issuing;

/// <summary>Names of files that can be documents. Other systems and programs write the ending in capital letters as well.</summary>
internal static class PdfNames
{
    private const string Ending = ".pdf";

    /// <summary>In their order, without the folder; none where there is no such folder.</summary>
    public static IReadOnlyList<string> In(string folder) =>
        Directory.Exists(folder)
            ?
            [
                .. Directory
                    .EnumerateFiles(folder)
                    .Select(file => Path.GetFileName(file))
                    .Where(name => Path.GetExtension(name).Equals(Ending, StringComparison.OrdinalIgnoreCase))
                    .Order(StringComparer.Ordinal),
            ]
            : [];
}
