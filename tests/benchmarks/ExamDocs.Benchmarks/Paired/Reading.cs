using System.IO.Compression;
using System.Text.Json;
using System.Xml;
using BenchmarkDotNet.Attributes;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Benchmarks.Paired;

/// <summary>The example visit, read from a workbook and from JSON, beside the library underneath, which keeps nothing.</summary>
public class Reading
{
    private readonly byte[] workbook = File.ReadAllBytes(Path.Combine(Folders.Examples, "visit.xlsx"));
    private readonly byte[] json = File.ReadAllBytes(Path.Combine(Folders.Examples, "visit.json"));

    [BenchmarkCategory("workbook"), Benchmark(Baseline = true, Description = "ZipArchive and XmlReader")]
    public long WorkbookBare()
    {
        using var zip = new ZipArchive(new MemoryStream(workbook));
        var nodes = 0L;
        foreach (var part in zip.Entries.Where(e => e.FullName.EndsWith(".xml", StringComparison.Ordinal)))
        {
            using var xml = XmlReader.Create(part.Open());
            while (xml.Read())
                nodes++;
        }
        return nodes;
    }

    [BenchmarkCategory("workbook"), Benchmark(Description = "read the workbook")]
    public ReadResult Workbook() => WorkbookRecordReader.Read(new MemoryStream(workbook), "visit.xlsx");

    [BenchmarkCategory("JSON"), Benchmark(Baseline = true, Description = "JsonDocument.Parse")]
    public int JsonBare()
    {
        using var parsed = JsonDocument.Parse(json);
        return parsed.RootElement.GetProperty("items").GetArrayLength();
    }

    [BenchmarkCategory("JSON"), Benchmark(Description = "read the JSON")]
    public ReadResult Json() => JsonRecordReader.Read(json, "visit.json");
}
