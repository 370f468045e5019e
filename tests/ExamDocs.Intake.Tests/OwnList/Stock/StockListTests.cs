using System.Text;
using ClosedXML.Excel;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Stock;

namespace ExamDocs.Intake.Tests.OwnList.Stock;

public sealed class StockListTests
{
    [Theory]
    [InlineData("part number,quantity\nSP-11,3\n")]
    [InlineData("Teilenummer;Bestand\nSP-11;3\n")]
    [InlineData("désignation;référence;quantité\npont;SP-11;3\n")]
    [InlineData("Stock of the van,\n,\nPart No.,Qty\nSP-11,1\nSP-11,2\n")]
    public void A_number_and_a_quantity_are_found_by_their_headings(string csv)
    {
        var stock = Read(csv);
        Assert.Null(stock.Refused);
        Assert.Empty(stock.Remarks);
        Assert.Equal(3, stock.Quantities["SP-11"]);
    }

    [Theory]
    [InlineData("SP-11,about 3")]
    [InlineData("SP-11,-3")]
    [InlineData("SP-11,2.5")]
    [InlineData("SP-11,")]
    [InlineData(",3")]
    public void What_is_no_number_of_a_part_is_named_and_not_counted(string row)
    {
        var stock = Read($"part number,quantity\n{row}\n");
        Assert.Single(stock.Remarks);
        Assert.Empty(stock.Quantities);
    }

    [Theory]
    [InlineData("part number,price\nSP-11,3\n")]
    [InlineData("SP-11,3\n")]
    public void Without_both_headings_nothing_is_read(string csv) => Assert.NotNull(Read(csv).Refused);

    /// <summary>Last year's stock on another sheet, hidden rows and merged cells could make it more than there is.</summary>
    [Fact]
    public void What_could_count_too_much_is_named()
    {
        using var book = new XLWorkbook();
        foreach (var name in new[] { "2025", "2026" })
        {
            var sheet = book.AddWorksheet(name);
            (sheet.Cell("A1").Value, sheet.Cell("B1").Value) = ("part number", "quantity");
            (sheet.Cell("A2").Value, sheet.Cell("A3").Value, sheet.Cell("B2").Value) = ("SP-11", "SP-12", 3);
            sheet.Range("B2:B3").Merge();
            sheet.Row(2).Hide();
        }
        using var file = new MemoryStream();
        book.SaveAs(file);
        var stock = StockList.Of(ListBookReader.Read(file.ToArray(), "stock.xlsx"));
        Assert.Equal(6, stock.Quantities["SP-11"]);
        Assert.Contains(stock.Remarks, r => r.Text == "the stock is on several sheets, which were added up: 2025, 2026");
        Assert.Contains(stock.Remarks, r => r.Text.Contains("hidden rows", StringComparison.Ordinal));
        Assert.Contains(stock.Remarks, r => r.Text.Contains("merged over several rows", StringComparison.Ordinal));
    }

    private static StockList Read(string csv) => StockList.Of(ListBookReader.Read(Encoding.UTF8.GetBytes(csv), "stock.csv"));
}
