using ExamDocs.Core.Findings;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Stock;
using ExamDocs.Intake.Workbook.Tables;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>Writes what has to be ordered: a workbook with what it is for, or the order alone as separated values.</summary>
public static class WriteSpares
{
    /// <summary>Reads what is in stock.</summary>
    /// <param name="path">A workbook or a file of separated values.</param>
    public static StockRead Stock(string path) => Of(ReadList.From(path));

    /// <param name="bytes">The file.</param>
    /// <param name="fileName">Its name without a folder.</param>
    public static StockRead Stock(byte[] bytes, string fileName) => Of(ListBookReader.Read(bytes, fileName));

    /// <summary>What has to be replaced, set against a stock.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="stock">Null for nothing.</param>
    public static SparesPlan Plan(SparesRequest request, StockRead? stock) =>
        SparesPlan.Of(ListSpares.In(request), stock?.Quantities ?? new Dictionary<string, int>(StringComparer.Ordinal));

    /// <summary>The workbook, whole.</summary>
    public static byte[] Workbook(SparesPlan plan, MessageLanguage language) => TableWorkbook.Of(SpareSheets.Of(plan, language));

    /// <param name="plan">What has to be ordered.</param>
    /// <param name="file">Ends in .xlsx or .csv.</param>
    /// <param name="outputs">What may be written over.</param>
    /// <param name="language">Of headings and reasons.</param>
    /// <exception cref="OutputRefusedException">It may not be written there.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void Run(SparesPlan plan, string file, OutputGuard outputs, MessageLanguage language)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        ArgumentNullException.ThrowIfNull(file);
        outputs.Write(
            file,
            file.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
                ? TableCsv.Of(SpareSheets.Of(plan, language)[0])
                : Workbook(plan, language)
        );
    }

    private static StockRead Of(ListBook book)
    {
        var stock = StockList.Of(book);
        return new(stock.Quantities, stock.Remarks, stock.Refused);
    }
}

/// <summary>What is in stock, as a list says it.</summary>
/// <param name="Quantities">By part number, letter by letter.</param>
/// <param name="Remarks">Every row that was not counted, and why.</param>
/// <param name="Refused">Why nothing could be read; null where something was.</param>
public sealed record StockRead(IReadOnlyDictionary<string, int> Quantities, IReadOnlyList<Message> Remarks, Message? Refused);
