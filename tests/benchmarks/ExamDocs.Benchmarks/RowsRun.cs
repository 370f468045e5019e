using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Benchmarks;

/// <summary>Reads a workbook of a hundred thousand rows, ours and a bare loop each in a process of its own.</summary>
internal static class RowsRun
{
    private const int Rows = 100_000;

    /// <summary>Times it is read again in the same process: what starting costs is no part of reading.</summary>
    private const int Warm = 5;

    /// <summary>In the child: reads the file in one of the two ways, and prints CPU seconds, the most memory held, and what was read.</summary>
    public static void One(string how, string path)
    {
        var said = Once(how, path);
        var peak = File.ReadLines("/proc/self/status").First(l => l.StartsWith("VmHWM", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[1];
        var cpu = Enumerable.Range(0, Warm).Min(_ =>
        {
            var before = Process.GetCurrentProcess().TotalProcessorTime;
            Once(how, path);
            return Process.GetCurrentProcess().TotalProcessorTime - before;
        });
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{cpu.TotalSeconds:0.000}\t{int.Parse(peak, CultureInfo.InvariantCulture) / 1024}\t{said}"));
    }

    private static string Once(string how, string path)
    {
        using var file = File.OpenRead(path);
        if (how == "cells")
            return string.Create(CultureInfo.InvariantCulture, $"{Cells(file)} cells");
        if (how == "bare")
            return string.Create(CultureInfo.InvariantCulture, $"{Bare(file)} nodes");
        var read = WorkbookReader.Read(file, "rows.xlsx");
        return read.Unreadable ?? string.Create(CultureInfo.InvariantCulture, $"{((Intake.ListNode)read.Root!.Members.First(m => m.Key == "disposals").Value).Elements.Count} rows, {read.Findings.Count} findings");
    }

    /// <summary>The guarded reader alone: every cell with its kind, text and format, all limits watched, nothing built of it.</summary>
    private static long Cells(Stream file)
    {
        var budget = new ReadingBudget();
        using var package = WorkbookPackage.Open(file, budget);
        var directory = WorkbookDirectory.Read(package);
        var rows = new SheetRows(SharedStrings.Read(package, directory.SharedStrings, budget), CellFormats.Read(package, directory.Styles), budget);
        return directory.Sheets.Sum(sheet =>
        {
            using var part = package.Read(sheet.Part);
            return rows.Read(part).Sum(r => (long)r.Cells.Count);
        });
    }

    public static void All()
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-rows-");
        try
        {
            var path = Path.Combine(folder.FullName, "rows.xlsx");
            Make(path);
            var rounds = Enumerable.Range(0, 3).Select(_ => (Ours: Run("ours", path), Cells: Run("cells", path), Bare: Run("bare", path))).ToList();
            var (ours, cells, bare) = (rounds.MinBy(r => r.Ours.Seconds).Ours, rounds.MinBy(r => r.Cells.Seconds).Cells, rounds.MinBy(r => r.Bare.Seconds).Bare);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{Rows} rows, {new FileInfo(path).Length / 1024} KiB, least of 15: the whole record {ours.Seconds:0.000} CPU s, {ours.Mebibytes} MiB ({ours.Said}); guarded cells alone {cells.Seconds:0.000} CPU s, {cells.Mebibytes} MiB ({cells.Said}); bare ZipArchive and XmlReader {bare.Seconds:0.000} CPU s, {bare.Mebibytes} MiB ({bare.Said}); ratios {ours.Seconds / bare.Seconds:0.0} and {cells.Seconds / bare.Seconds:0.0}"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (double Seconds, int Mebibytes, string Said) Run(string how, string path)
    {
        using var child = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, ["rows-one", how, path]) { RedirectStandardOutput = true })!;
        var answer = child.StandardOutput.ReadToEnd().Trim().Split('\t');
        child.WaitForExit();
        return (double.Parse(answer[0], CultureInfo.InvariantCulture), int.Parse(answer[1], CultureInfo.InvariantCulture), answer[2]);
    }

    private static long Bare(Stream file)
    {
        using var zip = new ZipArchive(file);
        long nodes = 0;
        foreach (var part in zip.Entries.Where(e => e.FullName.EndsWith(".xml", StringComparison.Ordinal)))
        {
            using var xml = XmlReader.Create(part.Open());
            while (xml.Read())
                nodes++;
        }

        return nodes;
    }

    /// <summary>What became of withdrawn kit, one row each, as spreadsheet programs write rows: texts shared, cells addressed.</summary>
    private static void Make(string path)
    {
        const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        const string Links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        using var zip = ZipFile.Open(path, ZipArchiveMode.Create);
        Part("[Content_Types].xml", w => w.Write("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"/>"));
        Part("_rels/.rels", w => w.Write($"<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r\" Type=\"{Links}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>"));
        Part("xl/_rels/workbook.xml.rels", w => w.Write($"<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"s\" Type=\"{Links}/worksheet\" Target=\"sheet.xml\"/><Relationship Id=\"t\" Type=\"{Links}/sharedStrings\" Target=\"texts.xml\"/></Relationships>"));
        Part("xl/workbook.xml", w => w.Write($"<workbook xmlns=\"{Main}\" xmlns:r=\"{Links}\"><sheets><sheet name=\"Disposals\" sheetId=\"1\" r:id=\"s\"/></sheets></workbook>"));
        Part("xl/texts.xml", w =>
        {
            w.Write($"<sst xmlns=\"{Main}\"><si><t>item</t></si><si><t>action</t></si><si><t>quarantined</t></si><si><t>destroyed</t></si>");
            for (var row = 0; row < Rows; row++)
                w.Write(string.Create(CultureInfo.InvariantCulture, $"<si><t>ITEM-{row:000000}</t></si>"));
            w.Write("</sst>");
        });
        Part("xl/sheet.xml", w =>
        {
            w.Write($"<worksheet xmlns=\"{Main}\"><sheetData><row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\" t=\"s\"><v>1</v></c></row>");
            for (var row = 0; row < Rows; row++)
                w.Write(string.Create(CultureInfo.InvariantCulture, $"<row r=\"{row + 2}\" spans=\"1:2\"><c r=\"A{row + 2}\" s=\"0\" t=\"s\"><v>{row + 4}</v></c><c r=\"B{row + 2}\" s=\"0\" t=\"s\"><v>{2 + (row % 2)}</v></c></row>"));
            w.Write("</sheetData></worksheet>");
        });

        void Part(string name, Action<StreamWriter> write)
        {
            using var writer = new StreamWriter(zip.CreateEntry(name).Open(), new UTF8Encoding(false));
            write(writer);
        }
    }
}
