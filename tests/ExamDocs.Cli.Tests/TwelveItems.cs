using ClosedXML.Excel;

namespace ExamDocs.Cli.Tests;

/// <summary>A workbook with twelve items of the example, all fit, of which a check has nothing to say.</summary>
internal static class TwelveItems
{
    public const string Workbook = "visit.xlsx";

    private static readonly string[] Ids =
    [
        "HAR-01",
        "HAR-07",
        "BRG-01",
        "BRG-09",
        "LAN-01",
        "LAN-03",
        "CON-01",
        "CON-02",
        "PUL-01",
        "PUL-03",
        "SWV-01",
        "ADJ-01",
    ];

    private static readonly (string List, string Key)[] Lists =
    [
        ("items", "id"),
        ("examinations", "item"),
        ("renewals", "item"),
        ("remedies", "item"),
        ("releases", "item"),
        ("disposals", "item"),
    ];

    /// <summary>Writes it into the program's folder, and says what is changed in it.</summary>
    public static async Task WriteAsync(Examdocs examdocs, Action<XLWorkbook>? change = null)
    {
        var record = Records.Example();
        foreach (var (list, key) in Lists)
        {
            foreach (var row in record[list]?.AsArray().Where(r => !Ids.Contains((string?)r![key], StringComparer.Ordinal)).ToList() ?? [])
                record[list]!.AsArray().Remove(row);
        }
        var written = await examdocs.RunAsync("blank", "--out", Workbook, "--from", record.Write(examdocs, "twelve.json"), "--answers");
        Assert.Equal(0, written.ExitCode);
        File.Delete(examdocs.At("twelve.json"));
        if (change is null)
            return;
        using var workbook = new XLWorkbook(examdocs.At(Workbook));
        change(workbook);
        workbook.Save();
    }

    /// <summary>The cell of an item under a heading of its sheet.</summary>
    public static IXLCell Cell(this XLWorkbook workbook, string sheet, string item, string heading)
    {
        var cells = workbook.Worksheet(sheet);
        var row = cells.RowsUsed().Single(r => string.Equals(r.Cell(1).GetString(), item, StringComparison.Ordinal));
        return row.Cell(
            cells
                .Row(1)
                .CellsUsed()
                .Single(c => string.Equals(c.GetString().TrimEnd(' ', '*'), heading, StringComparison.Ordinal))
                .Address.ColumnNumber
        );
    }

    /// <summary>Lines of a run that name a severity: each is a finding.</summary>
    public static IReadOnlyList<string> Findings(this Run run) =>
        [
            .. run
                .Err.Split('\n')
                .Where(l =>
                    l.TrimStart() is var line
                    && (
                        line.StartsWith("error", StringComparison.Ordinal)
                        || line.StartsWith("warning", StringComparison.Ordinal)
                        || line.StartsWith("note", StringComparison.Ordinal)
                    )
                ),
        ];
}
