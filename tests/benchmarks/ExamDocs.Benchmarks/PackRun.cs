using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company.Packing;
using NodaTime;

namespace ExamDocs.Benchmarks;

/// <summary>
/// Builds an audit pack of two thousand documents in a process of its own, and prints how long it took and the most memory that the program
/// held. Documents differ and are as large as a printed label, every tenth as large as a report.
/// </summary>
internal static class PackRun
{
    private const int Visits = 20;
    private const int ItemsOfVisit = 99;
    private const int SmallBytes = 60_000;
    private const int LargeBytes = 130_000;
    private const string Employer = "Harrowmere Tree Works";

    private static readonly LocalDate Day = new(2026, 5, 12);

    public static void All(string root)
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-pack-");
        try
        {
            var register = Path.Combine(folder.FullName, "register.db");
            Make(register, root);
            Console.WriteLine($"register of {new FileInfo(register).Length / 1048576} MiB");
            using var child = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, ["pack-one", register]))!;
            child.WaitForExit();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>In the child.</summary>
    public static async Task OneAsync(string register)
    {
        var watch = Stopwatch.StartNew();
        var request = new PackRequest(register, new PackQuestion(Employer, Day, Day), Path.ChangeExtension(register, ".zip"));
        var result = await BuildPack.RunAsync(request);
        var peak = File.ReadLines("/proc/self/status")
            .First(l => l.StartsWith("VmHWM", StringComparison.Ordinal))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)[1];
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{result.Counted.Items} items, {result.Counted.Documents} documents, reading copy {result.HasCopy}: "
                    + $"{watch.Elapsed.TotalSeconds:0.0} s, CPU {Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds:0.0} s, "
                    + $"at most {int.Parse(peak, CultureInfo.InvariantCulture) / 1024} MiB; "
                    + $"ZIP {Size(request.OutFile)} MiB, PDF {Size(request.CopyFile)} MiB"
            )
        );
    }

    private static long Size(string file) => File.Exists(file) ? new FileInfo(file).Length / 1048576 : 0;

    private static void Make(string place, string root)
    {
        var example = JsonNode.Parse(File.ReadAllText(Path.Combine(root, "examples", "visit.json")))!.AsObject();
        var files = Enumerable.Range(0, Visits).Select(n => Visit(example, n, Path.GetDirectoryName(place)!)).ToList();
        ImportVisits.Run(files, place, Day, KnownRules.BuiltIn);
        using var register = DocumentRegister.Open(place, Day);
        var chance = new Random(1);
        foreach (var visit in register.Visits.All())
        {
            var items = register.Visits.Outcomes().Where(o => o.Visit.Visit == visit.Visit).Select(o => o.Outcome.Item!).ToList();
            Issue(register, visit.Visit, "report", items, Page(chance, LargeBytes));
            foreach (var item in items)
                Issue(register, visit.Visit, "due-label", [item], Page(chance, SmallBytes));
        }
    }

    private static void Issue(DocumentRegister register, int visit, string kind, IReadOnlyList<string> items, byte[] pdf) =>
        register.Publish(
            register.Take(
                new DocumentRequest(char.ToUpperInvariant(kind[0]), Day.Year, kind, $"{kind} {visit} {items[0]}", items, null)
                {
                    Visit = visit,
                }
            ),
            pdf,
            1,
            "{}"
        );

    /// <summary>Connectors like the example's, under ids and serial numbers of their own.</summary>
    private static string Visit(JsonObject example, int number, string folder)
    {
        var record = example.DeepClone().AsObject();
        var (row, examination) = (Named(record["items"]!, "id", "CON-02"), Named(record["examinations"]!, "item", "CON-02"));
        var (rows, examinations) = (new JsonArray(), new JsonArray());
        for (var n = 0; n < ItemsOfVisit; n++)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"K-{number:00}-{n:00}");
            (var item, var looked) = (row.DeepClone(), examination.DeepClone());
            (item["id"], item["serial"], looked["item"]) = (id, $"S{id}", id);
            rows.Add(item);
            examinations.Add(looked);
        }
        (record["items"], record["examinations"]) = (rows, examinations);
        foreach (var list in new[] { "renewals", "remedies", "releases", "disposals" })
            record.Remove(list);
        record["visit"]!["reference"] = string.Create(CultureInfo.InvariantCulture, $"V-{number:00}");
        record["visit"]!["employer"]!["name"] = Employer;
        var path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"visit-{number:00}.json"));
        File.WriteAllText(path, record.ToJsonString());
        return path;
    }

    private static JsonNode Named(JsonNode list, string member, string id) => list.AsArray().First(i => (string?)i![member] == id)!;

    /// <summary>A page with so many bytes that cannot be packed.</summary>
    private static byte[] Page(Random chance, int bytes)
    {
        var noise = new byte[bytes];
        chance.NextBytes(noise);
        using var file = new MemoryStream();
        var places = new List<long>();
        Add("<</Type /Catalog /Pages 2 0 R>>"u8.ToArray());
        Add("<</Type /Pages /Kids [3 0 R] /Count 1>>"u8.ToArray());
        Add("<</Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Resources <</XObject <</P 5 0 R>>>> /Contents 4 0 R>>"u8.ToArray());
        Add("<</Length 0>>\nstream\n\nendstream"u8.ToArray());
        Add([.. Text($"<</Type /XObject /Subtype /Form /BBox [0 0 1 1] /Length {bytes}>>\nstream\n"), .. noise, .. "\nendstream"u8]);
        Add("<</Creator (benchmark)>>"u8.ToArray());
        var table = file.Position;
        file.Write(Text($"xref\n0 {places.Count + 1}\n0000000000 65535 f \n"));
        foreach (var place in places)
            file.Write(Text($"{place:0000000000} 00000 n \n"));
        file.Write(Text($"trailer\n<</Size {places.Count + 1} /Root 1 0 R /Info 6 0 R>>\nstartxref\n{table}\n%%EOF\n"));
        return file.ToArray();

        void Add(byte[] body)
        {
            if (places.Count == 0)
                file.Write("%PDF-1.7\n"u8);
            places.Add(file.Position);
            file.Write(Text($"{places.Count} 0 obj\n"));
            file.Write(body);
            file.Write("\nendobj\n"u8);
        }
    }

    private static byte[] Text(FormattableString text) => Encoding.Latin1.GetBytes(text.ToString(CultureInfo.InvariantCulture));
}
