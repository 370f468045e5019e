using ClosedXML.Excel;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;

namespace ExamDocs.Cli.Tests.Commands;

/// <summary>Parts to replace are listed from the register, against a stock list.</summary>
public sealed class SparesCommandTests
{
    private const string Stock = "part number,quantity\nSP-11,1\nSP-12,some\n";

    [Fact]
    public async Task What_the_stock_gives_is_told_from_what_has_to_be_ordered()
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs);
        var listed = await examdocs.RunAsync(
            "spares",
            "--stock",
            Written(examdocs, "stock.csv", Stock),
            "--out",
            examdocs.At("order.xlsx")
        );
        Assert.Equal(0, listed.ExitCode);
        Assert.Contains("row 3, SP-12: 'some' is no whole number: not counted", listed.Err, StringComparison.Ordinal);
        Assert.Contains("SP-11 or SP-11-B: 1 needed, 1 from stock, 0 to order", listed.Out, StringComparison.Ordinal);
        Assert.Contains("CUT on H-1", listed.Out, StringComparison.Ordinal);
        Assert.Contains("Parts left out: 1. Why: they have no id.", listed.Out, StringComparison.Ordinal);
        using var workbook = new XLWorkbook(examdocs.At("order.xlsx"));
        Assert.Equal(["Order", "What for", "No part recorded", "Left out"], workbook.Worksheets.Select(s => s.Name));
    }

    [Fact]
    public async Task A_stock_list_without_its_headings_is_refused()
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs);
        var listed = await examdocs.RunAsync("spares", "--stock", Written(examdocs, "stock.csv", "a,b\n1,2\n"));
        Assert.Equal(2, listed.ExitCode);
        Assert.Contains("part number", listed.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_kind_of_file_is_refused()
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs);
        Assert.Equal(2, (await examdocs.RunAsync("spares", "--out", examdocs.At("order.txt"))).ExitCode);
    }

    private static async Task ImportAsync(Examdocs examdocs)
    {
        var record = new StoryVisit("V-1", "2026-05-11", "Alder Vale Ltd")
            .Harness("H-1", "H100")
            .Bridge("CUT", "Q100", i => i.On("H-1").Cut())
            .Bridge("", "Q300", i => i.On("H-1"));
        // A finding of the record makes it 1; what is withdrawn is imported all the same.
        Assert.InRange((await examdocs.RunAsync("register", "import", Written(examdocs, "visit.json", record.Json))).ExitCode, 0, 1);
    }

    private static string Written(Examdocs examdocs, string name, string text)
    {
        var path = examdocs.At(name);
        File.WriteAllText(path, text);
        return path;
    }
}
