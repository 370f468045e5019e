using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Benchmarks;

/// <summary>
/// Reads a workbook of a hundred thousand rows in four ways, each in a process of its own: the whole record, the guarded
/// cells alone, and beside them two bare loops over the same file, one that takes what the cells hold and one that only steps.
/// </summary>
internal static class RowsRun
{
    private const int Rows = 100_000;

    /// <summary>Times it is read again in the same process: what starting costs is no part of reading.</summary>
    private const int Warm = 7;

    /// <summary>
    /// In the child: reads the file in one of the two ways, and prints CPU seconds, the most memory held, and what was read.
    /// </summary>
    public static void One(string how, string path)
    {
        var said = Once(how, path);
        var peak = File.ReadLines("/proc/self/status")
            .First(l => l.StartsWith("VmHWM", StringComparison.Ordinal))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)[1];
        var cpu = Enumerable
            .Range(0, Warm)
            .Min(_ =>
            {
                // What the time before left behind is not this one's to clear away.
                GC.Collect();
                GC.WaitForPendingFinalizers();
                GC.Collect();
                var before = Process.GetCurrentProcess().TotalProcessorTime;
                Once(how, path);
                return Process.GetCurrentProcess().TotalProcessorTime - before;
            });
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{cpu.TotalSeconds:0.000}\t{int.Parse(peak, CultureInfo.InvariantCulture) / 1024}\t{said}"
            )
        );
    }

    private static string Once(string how, string path)
    {
        using var file = File.OpenRead(path);
        if (how == "cells")
            return string.Create(CultureInfo.InvariantCulture, $"{Cells(file)} cells");
        if (how == "taking")
            return string.Create(CultureInfo.InvariantCulture, $"{Taking(file)} cells");
        if (how == "stepping")
            return string.Create(CultureInfo.InvariantCulture, $"{Stepping(file)} nodes");
        var read = WorkbookReader.Read(file, "rows.xlsx");
        return read.Unreadable
            ?? string.Create(
                CultureInfo.InvariantCulture,
                $"{((Intake.ListNode)read.Root!.Members.First(m => m.Key == "disposals").Value).Elements.Count} rows, "
                    + $"{read.Findings.Count} findings"
            );
    }

    /// <summary>The guarded reader alone: every cell with its kind, text and format, all limits watched, nothing built of it.</summary>
    private static long Cells(Stream file)
    {
        var budget = new ReadingBudget();
        using var package = WorkbookPackage.Open(file, budget);
        var directory = WorkbookDirectory.Read(package);
        var rows = new SheetRows(
            SharedStrings.Read(package, directory.SharedStrings, budget),
            CellFormats.Read(package, directory.Styles),
            budget
        );
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
            string[] ways = ["record", "cells", "taking", "stepping"];
            var rounds = Enumerable.Range(0, 3).Select(_ => ways.Select(way => Run(way, path)).ToList()).ToList();
            var (record, cells, taking, stepping) = (Least(0), Least(1), Least(2), Least(3));
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Rows} rows, {new FileInfo(path).Length / 1024} KiB, CPU seconds, the least of 21; times each of the two loops"
                )
            );
            Show("the whole record", record);
            Show("guarded cells alone", cells);
            Show("bare loop, texts taken", taking);
            Show("bare loop, stepping", stepping);

            Measured Least(int way) => rounds.Select(r => r[way]).MinBy(r => r.Seconds)!;
            void Show(string what, Measured it) =>
                Console.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{what, -24}{it.Seconds, 8:0.000}{it.Mebibytes, 6} "
                            + $"MiB{it.Seconds / taking.Seconds, 7:0.00}{it.Seconds / stepping.Seconds, 7:0.00}   {it.Said}"
                    )
                );
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private sealed record Measured(double Seconds, int Mebibytes, string Said);

    private static Measured Run(string how, string path)
    {
        using var child = Process.Start(
            new ProcessStartInfo(Environment.ProcessPath!, ["rows-one", how, path]) { RedirectStandardOutput = true }
        )!;
        var answer = child.StandardOutput.ReadToEnd().Trim().Split('\t');
        child.WaitForExit();
        return new(double.Parse(answer[0], CultureInfo.InvariantCulture), int.Parse(answer[1], CultureInfo.InvariantCulture), answer[2]);
    }

    /// <summary>Steps from node to node, and looks at none.</summary>
    private static long Stepping(Stream file)
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

    /// <summary>
    /// The least that whoever wants the cells can do: the shared texts are kept, and of each cell its address, type, style and text are
    /// taken.
    /// </summary>
    private static long Taking(Stream file)
    {
        using var zip = new ZipArchive(file);
        var texts = new List<string>();
        using (var xml = XmlReader.Create(zip.GetEntry("xl/texts.xml")!.Open()))
        {
            while (xml.Read())
            {
                if (xml.NodeType is XmlNodeType.Text)
                    texts.Add(xml.Value);
            }
        }

        long cells = 0,
            length = 0;
        string? address = null,
            type = null,
            style = null;
        using var sheet = XmlReader.Create(zip.GetEntry("xl/sheet.xml")!.Open());
        while (sheet.Read())
        {
            if (sheet.NodeType is XmlNodeType.Element && sheet.LocalName == "c")
            {
                (address, type, style) = (sheet.GetAttribute("r"), sheet.GetAttribute("t"), sheet.GetAttribute("s"));
            }
            else if (sheet.NodeType is XmlNodeType.Text)
            {
                cells++;
                var text = type == "s" ? texts[int.Parse(sheet.Value, NumberStyles.None, CultureInfo.InvariantCulture)] : sheet.Value;
                length += text.Length + address!.Length + (style?.Length ?? 0);
            }
        }

        return length > 0 ? cells : 0;
    }

    /// <summary>What became of withdrawn kit, one row each, as spreadsheet programs write rows: texts shared, cells addressed.</summary>
    private static void Make(string path)
    {
        const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        const string Links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        using var zip = ZipFile.Open(path, ZipArchiveMode.Create);
        Part("[Content_Types].xml", w => w.Write("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"/>"));
        Part("_rels/.rels", w =>
            w.Write(
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship "
                    + $"Id=\"r\" Type=\"{Links}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>"
            )
        );
        Part("xl/_rels/workbook.xml.rels", w =>
            w.Write(
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship "
                    + $"Id=\"s\" Type=\"{Links}/worksheet\" Target=\"sheet.xml\"/><Relationship Id=\"t\" "
                    + $"Type=\"{Links}/sharedStrings\" Target=\"texts.xml\"/></Relationships>"
            )
        );
        Part("xl/workbook.xml", w =>
            w.Write(
                $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Links}\"><sheets><sheet name=\"Disposals\" sheetId=\"1\" "
                    + "r:id=\"s\"/></sheets></workbook>"
            )
        );
        Part("xl/texts.xml", w =>
        {
            w.Write(
                $"<sst xmlns=\"{Main}\" count=\"{2 + (2 * Rows)}\" "
                    + $"uniqueCount=\"{4 + Rows}\"><si><t>item</t></si><si><t>action</t></si><si><t>quarantined</t></si><si><t>destroyed</t></si>"
            );
            for (var row = 0; row < Rows; row++)
                w.Write(string.Create(CultureInfo.InvariantCulture, $"<si><t>ITEM-{row:000000}</t></si>"));
            w.Write("</sst>");
        });
        Part("xl/sheet.xml", w =>
        {
            w.Write(
                $"<worksheet xmlns=\"{Main}\"><sheetData><row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\" "
                    + "t=\"s\"><v>1</v></c></row>"
            );
            for (var row = 0; row < Rows; row++)
                w.Write(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"<row r=\"{row + 2}\" spans=\"1:2\"><c r=\"A{row + 2}\" s=\"0\" t=\"s\"><v>{row + 4}</v></c><c "
                            + $"r=\"B{row + 2}\" s=\"0\" t=\"s\"><v>{2 + (row % 2)}</v></c></row>"
                    )
                );
            w.Write("</sheetData></worksheet>");
        });

        void Part(string name, Action<StreamWriter> write)
        {
            using var writer = new StreamWriter(zip.CreateEntry(name).Open(), new UTF8Encoding(false));
            write(writer);
        }
    }
}
