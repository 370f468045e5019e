using ExamDocs.Documents.LabelSheets;

namespace ExamDocs.UseCases.Reading;

/// <summary>What labels are printed on, or why that cannot be said.</summary>
/// <param name="Stock">Null where anything of it is at fault.</param>
/// <param name="Faults">A sentence each.</param>
public sealed record LabelStockRead(LabelStock? Stock, IReadOnlyList<string> Faults);

/// <summary>Finds a stock by its name, or reads the user's own from a file.</summary>
public static class ReadLabelStock
{
    /// <summary>The stocks built in, with what they are in words, in the order offered.</summary>
    public static IReadOnlyList<(string Name, string What)> Known { get; } = [.. LabelStock.All.Select(s => (s.Name, s.What))];

    /// <param name="nameOrFile">The name of a stock, or a .json file.</param>
    public static LabelStockRead From(string nameOrFile)
    {
        if (LabelStock.Find(nameOrFile) is { } known)
            return new(known, []);
        if (!nameOrFile.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
        {
            var names = string.Join(", ", Known.Select(s => s.Name));
            return new(null, [$"there is no stock '{nameOrFile}'; there are {names}, or your own in a .json file"]);
        }
        try
        {
            var (stock, faults) = StockFile.Read(nameOrFile);
            return new(stock, [.. faults.Select(f => $"{nameOrFile}: {f}")]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            var why = e is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : e.Message;
            return new(null, [$"{nameOrFile}: {why}"]);
        }
    }
}
