namespace ExamDocs.UseCases.Company.Packing;

/// <summary>The items that a pack is asked for, as typed on a command line.</summary>
public static class PackItemList
{
    /// <summary>A list of kit is short; a file of more is something else. Bytes, inclusive.</summary>
    private const long Largest = 4L * 1024 * 1024;

    /// <param name="typed">Ids, and names of text files with one id on each line; a name that is a file counts as one.</param>
    /// <exception cref="IOException">A file cannot be read, or is too large.</exception>
    public static IReadOnlyList<string> Read(IEnumerable<string> typed) =>
        [
            .. typed
                .SelectMany(t => File.Exists(t) ? Lines(t) : [t])
                .Select(id => id.Trim())
                .Where(id => id.Length > 0)
                .Distinct(StringComparer.Ordinal),
        ];

    private static string[] Lines(string file) =>
        new FileInfo(file).Length <= Largest
            ? File.ReadAllLines(file)
            : throw new IOException($"{file} is larger than 4 MiB: name a text file with one id on each line");
}
