using System.Diagnostics;
using System.Xml.Linq;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>A spreadsheet program, run without a window to save workbooks in another format.</summary>
internal static class LibreOffice
{
    private static readonly string[] Places = ["/usr/bin/soffice", "/usr/local/bin/soffice", "/opt/libreoffice/program/soffice"];

    public static void SkipWhereMissing() => Assert.SkipUnless(Places.Any(File.Exists), "LibreOffice is not installed here");

    /// <summary>Opens all of them in one run and saves each.</summary>
    /// <param name="filter">Ending and name of the format, for example <c>fods</c>.</param>
    /// <param name="workbooks">Workbooks (.xlsx).</param>
    public static List<byte[]> Save(string filter, params byte[][] workbooks)
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-office");
        try
        {
            var files = workbooks.Select((w, n) => Path.Combine(folder.FullName, $"kit{n}.xlsx")).ToList();
            for (var n = 0; n < workbooks.Length; n++)
                File.WriteAllBytes(files[n], workbooks[n]);
            Run(folder.FullName, filter, files);
            return
            [
                .. files.Select(f =>
                    File.ReadAllBytes(
                        Path.Combine(folder.FullName, "saved", Path.ChangeExtension(Path.GetFileName(f), filter.Split(':')[0]))
                    )
                ),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Run(string folder, string filter, List<string> files)
    {
        using var process = Process.Start(
            new ProcessStartInfo(
                Places.First(File.Exists),
                [
                    $"-env:UserInstallation=file://{folder}/profile",
                    "--headless",
                    "--convert-to",
                    filter,
                    "--outdir",
                    Path.Combine(folder, "saved"),
                    .. files,
                ]
            )
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
        if (!process.WaitForExit(TimeSpan.FromMinutes(8)))
            process.Kill(entireProcessTree: true);
        Assert.True(process.HasExited && process.ExitCode == 0, "LibreOffice did not convert the workbooks");
    }
}

/// <summary>A cell as LibreOffice has it.</summary>
internal sealed record OfficeCell(string Text, string? Formula, string? Note, string? Fill);

/// <summary>The cells of a flat OpenDocument spreadsheet, by sheet and address; empty ones without a note are left out.</summary>
internal static class FlatSpreadsheet
{
    public static Dictionary<string, OfficeCell> Cells(byte[] file)
    {
        var xml = XDocument.Load(new MemoryStream(file));
        var fills = xml.Descendants()
            .Where(e => e.Name.LocalName is "style")
            .GroupBy(s => Of(s, "name") ?? "", StringComparer.Ordinal)
            .ToDictionary(
                s => s.Key,
                s => s.First().Elements().Select(p => Of(p, "background-color")).FirstOrDefault(c => c is not null),
                StringComparer.Ordinal
            );
        var cells = new Dictionary<string, OfficeCell>(StringComparer.Ordinal);
        foreach (var table in xml.Descendants().Where(e => e.Name.LocalName is "table" && e.Parent!.Name.LocalName is "spreadsheet"))
        {
            var row = 1;
            // A chart within the sheet has a table of its own.
            foreach (
                var line in table
                    .Descendants()
                    .Where(e => e.Name.LocalName is "table-row" && e.Ancestors().First(a => a.Name.LocalName is "table") == table)
            )
            {
                Row(Of(table, "name")!, row, line, fills, cells);
                row += int.Parse(Of(line, "number-rows-repeated") ?? "1", System.Globalization.CultureInfo.InvariantCulture);
            }
        }
        return cells;
    }

    private static void Row(string sheet, int row, XElement line, Dictionary<string, string?> fills, Dictionary<string, OfficeCell> cells)
    {
        var column = 1;
        foreach (var cell in line.Elements().Where(e => e.Name.LocalName is "table-cell" or "covered-table-cell"))
        {
            var note = cell.Elements().FirstOrDefault(e => e.Name.LocalName is "annotation");
            var text = string.Join('\n', cell.Elements().Where(e => e.Name.LocalName is "p").Select(p => p.Value));
            if (note is not null || text.Length > 0)
                cells.Add(
                    $"{sheet}!{Package(row, column)}",
                    new(
                        text,
                        Of(cell, "formula"),
                        note is null ? null : string.Join('\n', note.Elements().Where(e => e.Name.LocalName is "p").Select(p => p.Value)),
                        Of(cell, "style-name") is { } style ? fills.GetValueOrDefault(style) : null
                    )
                );
            column += int.Parse(Of(cell, "number-columns-repeated") ?? "1", System.Globalization.CultureInfo.InvariantCulture);
        }
    }

    private static string Package(int row, int column) => ExamDocs.Intake.Workbook.Package.CellAddress.Of(row, column);

    private static string? Of(XElement element, string attribute) =>
        element.Attributes().FirstOrDefault(a => a.Name.LocalName == attribute)?.Value;
}
