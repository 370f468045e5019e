using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Stock;

/// <summary>What a firm has in stock: a list with a column of part numbers and a column of quantities.</summary>
public sealed class StockList
{
    private static readonly HashSet<string> PartWords = Plain(
        "part number",
        "part no",
        "part nr",
        "part",
        "Teilenummer",
        "Teile-Nr.",
        "Artikelnummer",
        "Artikel-Nr.",
        "référence",
        "numéro de pièce",
        "pièce"
    );

    private static readonly HashSet<string> QuantityWords = Plain(
        "quantity",
        "qty",
        "in stock",
        "stock",
        "Menge",
        "Bestand",
        "Anzahl",
        "quantité",
        "en stock"
    );

    private StockList(IReadOnlyDictionary<string, int> quantities, IReadOnlyList<Message> remarks, Message? refused) =>
        (Quantities, Remarks, Refused) = (quantities, remarks, refused);

    /// <summary>By part number, letter by letter as it is typed; of several rows the sum.</summary>
    public IReadOnlyDictionary<string, int> Quantities { get; }

    /// <summary>Every row that was not counted, and why; and what of the sheets could make the count wrong.</summary>
    public IReadOnlyList<Message> Remarks { get; }

    /// <summary>Why nothing could be read; null where something was.</summary>
    public Message? Refused { get; }

    /// <param name="book">The list as it was read.</param>
    public static StockList Of(ListBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Unreadable is { } why)
            return new(new Dictionary<string, int>(StringComparer.Ordinal), [], $"unreadable: {why}");
        var (quantities, remarks, found) = (new Dictionary<string, int>(StringComparer.Ordinal), new List<Message>(), new List<string>());
        foreach (var sheet in book.Sheets)
        {
            var (row, part, quantity) = Headings(sheet);
            if (row is null)
                continue;
            found.Add(sheet.Name);
            // Hidden rows were counted too, and a merged quantity for each of its rows.
            if (!sheet.IsSeparated)
                remarks.AddRange(sheet.Remarks.Select(Message.AsIs));
            foreach (var filled in sheet.Rows.Where(r => r.Number > row.Number))
                Count(filled, part, quantity, quantities, remarks);
        }
        // A workbook may have the stock of last year on another sheet.
        if (found.Count > 1)
            remarks.Insert(0, $"the stock is on several sheets, which were added up: {string.Join(", ", found)}");
        return found.Count > 0
            ? new(quantities, remarks, null)
            : new(quantities, [], $"no sheet has a heading 'part number' and a heading 'quantity' in one row");
    }

    private static (ListRow? Row, int Part, int Quantity) Headings(ListSheet sheet) =>
        sheet
            .Rows.Select(r => ((ListRow?)r, Column(r, PartWords), Column(r, QuantityWords)))
            .FirstOrDefault(r => r is { Item2: > 0, Item3: > 0 });

    private static int Column(ListRow row, HashSet<string> words) =>
        row.Cells.FirstOrDefault(c => words.Contains(PlainWords.Of(c.Value.Text))).Key;

    private static void Count(ListRow row, int part, int quantity, Dictionary<string, int> quantities, List<Message> remarks)
    {
        var (number, typed) = (row.At(part), row.At(quantity));
        if (number is null && typed is null)
            return;
        if (number is null)
            remarks.Add($"row {row.Number} has no part number: not counted");
        else if (row.Cells[part] is { IsStruck: true } or { IsUnsound: true } || IsStruck(row, quantity))
            remarks.Add($"row {row.Number}, {number}: it is struck out or holds an error: not counted");
        else if (!int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            remarks.Add($"row {row.Number}, {number}: '{typed ?? ""}' is no whole number: not counted");
        else
            quantities[number] = Sum(quantities.GetValueOrDefault(number), count);
    }

    private static bool IsStruck(ListRow row, int quantity) =>
        row.Cells.TryGetValue(quantity, out var cell) && (cell.IsStruck || cell.IsUnsound);

    private static int Sum(int one, int other) => (int)Math.Min((long)one + other, int.MaxValue);

    private static HashSet<string> Plain(params string[] words) => [.. words.Select(PlainWords.Of)];
}
