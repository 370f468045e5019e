using ExamDocs.Documents.LabelSheets;

namespace ExamDocs.UseCases.Reading;

/// <summary>The stock that labels are printed on, or why it cannot be used.</summary>
/// <param name="Stock">Null where any part of it has a fault.</param>
/// <param name="Faults">A sentence each.</param>
public sealed record LabelStockRead(LabelStock? Stock, IReadOnlyList<string> Faults);

/// <summary>Finds a stock by its name, or reads the user's own from a file.</summary>
public static class ReadLabelStock
{
    /// <summary>The built-in stocks with their descriptions, in the order in which they are offered.</summary>
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
