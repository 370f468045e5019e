using System.Text.Json;
using System.Text.Json.Nodes;
using BenchmarkDotNet.Attributes;
using ExamDocs.Core;
using ExamDocs.Core.Records;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Benchmarks.Paired;

/// <summary>What becomes of a record once it was read: beside parsing its JSON, the least that can be done with it.</summary>
public class Checking
{
    private static readonly LocalDate Today = new(2026, 5, 12);
    private byte[] json = [];
    private ReadResult read = null!;
    private ReadResult unmeasured = null!;

    /// <summary>How often the example's 62 items are in the record.</summary>
    [Params(1, 20)]
    public int Times { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        json = RepeatedRecord.Of(Example(), Times);
        read = JsonRecordReader.Read(json, "visit.json");
        var without = Example();
        foreach (var examination in without["examinations"]!.AsArray())
            examination!.AsObject().Remove("diameters");
        unmeasured = JsonRecordReader.Read(RepeatedRecord.Of(without, Times), "visit.json");
    }

    [Benchmark(Baseline = true, Description = "parse the JSON alone")]
    public int Parse()
    {
        using var parsed = JsonDocument.Parse(json);
        return parsed.RootElement.GetProperty("items").GetArrayLength();
    }

    [Benchmark(Description = "check and determine")]
    public IReadOnlyList<DecidedVisit> Determined() => Of(read);

    [Benchmark(Description = "the same without measurements")]
    public IReadOnlyList<DecidedVisit> Unmeasured() => Of(unmeasured);

    private static IReadOnlyList<DecidedVisit> Of(ReadResult read) =>
        DetermineVisits.Of([new VisitToDecide(read.Record!, read.Findings, "visit.json")], known: null, Today);

    private static JsonObject Example() => JsonNode.Parse(File.ReadAllText(Path.Combine(Folders.Examples, "visit.json")))!.AsObject();
}
