using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Core;
using ExamDocs.Core.Records;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook;
using ExamDocs.UseCases.Tests.SeededYears;
using NodaTime;

namespace ExamDocs.Benchmarks;

/// <summary>
/// How many items of one visit are read, and checked and determined after reading, in a second of the processor: those of the example,
/// and those of a visit of the invented firm, each record repeated until it has so many.
/// </summary>
/// <remarks>
/// Seconds of the processor, not of the clock: these depend on what else the machine does. The time to compile is left out, as
/// each is done several times and the least counts; the time to clear memory away is in it.
/// </remarks>
internal static class CheckRun
{
    private const int Times = 7;
    private static readonly LocalDate Today = new(2026, 11, 30);

    public static void All(string root, int items)
    {
        Show("the example", Make(Example(root), items));
        Show("the invented firm", Make(Firm(), items));
    }

    /// <summary>Writes both records as JSON and as workbooks.</summary>
    public static void Write(string root, string folder, int items)
    {
        foreach (var (name, json) in new[] { ("example", Make(Example(root), items)), ("firm", Make(Firm(), items)) })
        {
            File.WriteAllBytes(Path.Combine(folder, $"{name}.json"), json);
            using var workbook = File.Create(Path.Combine(folder, $"{name}.xlsx"));
            CaptureWorkbook.Write(workbook, [], JsonRecordReader.Read(json, name).Record!, forNextVisit: false);
        }
    }

    private static JsonObject Example(string root) =>
        JsonNode.Parse(File.ReadAllText(Path.Combine(root, "examples", "visit.json")))!.AsObject();

    /// <summary>The visit at which the maker's notice is dealt with: some of its kit is withdrawn, and parts are renewed.</summary>
    private static JsonObject Firm() =>
        JsonNode.Parse(SeededFirm.Files(1).Single(f => f.Name.StartsWith("S-5-1", StringComparison.Ordinal)).Json)!.AsObject();

    private static byte[] Make(JsonObject record, int items) =>
        RepeatedRecord.Of(record, Math.Max(1, items / record["items"]!.AsArray().Count));

    private static void Show(string what, byte[] json)
    {
        var read = JsonRecordReader.Read(json, "visit.json");
        var record = read.Record!;
        using var written = new MemoryStream();
        CaptureWorkbook.Write(written, [], record, forNextVisit: false);
        var workbook = written.ToArray();
        var items = record.Items.Count;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}, {items} items, {json.Length >> 10} KiB of JSON"));
        var parsing = Least(() =>
        {
            using var parsed = JsonDocument.Parse(json);
        });
        Print("parse the JSON alone", items, parsing);
        Print("read the JSON", items, Least(() => JsonRecordReader.Read(json, "visit.json")));
        Print("read the workbook", items, Least(() => WorkbookRecordReader.Read(new MemoryStream(workbook), "visit.xlsx")));
        Print("check and determine", items, Least(() => Decided(read)));
        var decided = Decided(read)[0].Visit;
        var outcomes = decided.Items.CountBy(i => i.Outcome).OrderBy(g => g.Key).Select(g => $"{g.Value} {g.Key}");
        Console.WriteLine($"  {decided.Findings.Count} findings; {string.Join(", ", outcomes)}");
    }

    private static IReadOnlyList<DecidedVisit> Decided(ReadResult read) =>
        DetermineVisits.Of([new VisitToDecide(read.Record!, read.Findings, "visit.json")], known: null, Today);

    private static void Print(string what, int items, TimeSpan cpu) =>
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"  {what, -24}{cpu.TotalMilliseconds, 8:0.0} ms{items / cpu.TotalSeconds, 10:0} items a second"
            )
        );

    private static TimeSpan Least(Action action)
    {
        // Once more than is counted, twice over: compiled code is replaced by faster code after some calls.
        action();
        action();
        return Enumerable
            .Range(0, Times)
            .Min(_ =>
            {
                GC.Collect();
                GC.WaitForPendingFinalizers();
                var before = Process.GetCurrentProcess().TotalProcessorTime;
                action();
                return Process.GetCurrentProcess().TotalProcessorTime - before;
            });
    }
}
