using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using NodaTime;

namespace ExamDocs.Benchmarks;

/// <summary>
/// Lists what falls due from registers of ten thousand and of a hundred thousand items, each in a process of its own. The items are those
/// of the example, again and again under other ids, serial numbers, references and employers; each was examined at two visits, and
/// reports of both are issued.
/// </summary>
internal static class DueRun
{
    private static readonly LocalDate Today = new(2026, 11, 30);

    /// <summary>In the child: lists, and prints CPU seconds, the most memory held, and what was found.</summary>
    public static void One(string register)
    {
        var before = Process.GetCurrentProcess().TotalProcessorTime;
        var list = ListDue.In(new DueRequest(register, Today, Today.PlusMonths(12), Today));
        var cpu = Process.GetCurrentProcess().TotalProcessorTime - before;
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{cpu.TotalSeconds:0.00}\t{Mebibytes()}\t{list.Due.Count} due, {list.Apart.Count} not to be used"
            )
        );
    }

    /// <param name="root">Of the repository, for its example.</param>
    /// <param name="counts">How many items; for each a register is made.</param>
    public static void All(string root, params IReadOnlyList<int> counts)
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-due-").FullName;
        try
        {
            foreach (var count in counts)
            {
                var register = Path.Combine(folder, FormattableString.Invariant($"{count}.db"));
                Make(root, register, count);
                using var child = Process.Start(
                    new ProcessStartInfo(Environment.ProcessPath!, ["due-one", register]) { RedirectStandardOutput = true }
                )!;
                var answer = child.StandardOutput.ReadToEnd().Trim().Split('\t');
                child.WaitForExit();
                Console.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{count, 8} items, register of {new FileInfo(register).Length >> 20} MiB: {answer[0]} s CPU, {answer[1]} MiB, {answer[2]}"
                    )
                );
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Makes a register of so many items, or a few more.</summary>
    public static void Make(string root, string register, int count)
    {
        var visits = Decided(Path.Combine(root, "examples/visit.json"));
        using var made = DocumentRegister.Open(register, Today);
        var perVisit = visits[0].Record["items"]!.AsArray().Count;
        var blocks = (count + perVisit - 1) / perVisit;
        foreach (var chunk in Enumerable.Range(1, blocks).Chunk(50))
        {
            var stored = chunk.SelectMany(block => visits.Select(v => Renamed(v.Record, v.Outcomes, block))).ToList();
            var numbers = made.Visits.Remember(stored)!;
            foreach (var (visit, number) in stored.Zip(numbers, (v, n) => (v, n.Visit)))
            {
                var items = visit.Outcomes.Where(o => o.Outcome is "fit" or "fit-until").Select(o => o.Item!).ToList();
                var request = new DocumentRequest('R', 2026, "report", number.ToString(CultureInfo.InvariantCulture), items, Folder: null)
                {
                    Visit = number,
                };
                made.Publish(made.Take(request), [.. "%PDF-1.7"u8], 1, "{}");
            }
        }
    }

    /// <summary>The example and the same kit half a year later, as the program decides them.</summary>
    private static List<(JsonObject Record, IReadOnlyList<RememberedOutcome> Outcomes)> Decided(string example)
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-due-").FullName;
        try
        {
            var first = JsonNode.Parse(File.ReadAllText(example))!.AsObject();
            var second = JsonNode.Parse(File.ReadAllText(example))!.AsObject();
            (second["visit"]!["reference"], second["visit"]!["examinedOn"], second["visit"]!["reportedOn"]) = (
                "V-AGAIN",
                "2026-10-12",
                "2026-10-13"
            );
            var items = second["items"]!.AsArray().Select(i => (string)i!["id"]!).ToHashSet(StringComparer.Ordinal);
            foreach (var examination in second["examinations"]!.AsArray())
                examination!.AsObject().Remove("examinedOn");
            foreach (var done in new[] { "renewals", "remedies", "releases", "disposals" })
                second.Remove(done);
            var paths = new[] { first, second }.Select((record, n) => Written(record, Path.Combine(folder, $"{n}.json"))).ToList();
            var place = Path.Combine(folder, "register.db");
            ImportVisits.Run(paths, place, Today, KnownRules.BuiltIn);
            using var register = DocumentRegister.OpenToRead(place, Today);
            var outcomes = register.Visits.Outcomes().ToLookup(o => o.Visit.Visit, o => o.Outcome);
            return
            [
                .. register
                    .Visits.All()
                    .Select(v =>
                        (
                            JsonNode.Parse(register.Visits.Record(v.Visit))!.AsObject(),
                            (IReadOnlyList<RememberedOutcome>)[.. outcomes[v.Visit]]
                        )
                    ),
            ];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Written(JsonObject record, string path)
    {
        File.WriteAllText(path, record.ToJsonString());
        return path;
    }

    private static VisitToRemember Renamed(JsonObject record, IReadOnlyList<RememberedOutcome> outcomes, int block)
    {
        var names = record["items"]!
            .AsArray()
            .SelectMany(i => new[] { (string?)i!["id"], (string?)i["serial"] })
            .OfType<string>()
            .ToHashSet(StringComparer.Ordinal);
        var copy = record.DeepClone();
        Rename(copy);
        copy["visit"]!["reference"] = $"{(string)record["visit"]!["reference"]!}/{block}";
        copy["visit"]!["employer"]!["name"] = FormattableString.Invariant($"Firm {block % 40} Ltd");
        var json = Encoding.UTF8.GetBytes(copy.ToJsonString());
        return new(
            EmbeddedRecord.Read(json, "register").Record!,
            json,
            [.. outcomes.Select(o => o with { Item = o.Item is null ? null : Named(o.Item), Parts = [.. o.Parts.Select(Named)] })]
        );

        string Named(string name) => FormattableString.Invariant($"{name}-{block}");

        void Rename(JsonNode? node)
        {
            if (node is JsonArray array)
            {
                foreach (var element in array)
                    Rename(element);
            }
            else if (node is JsonObject members)
            {
                foreach (var (name, value) in members.ToList())
                {
                    if (value is JsonValue text && text.GetValueKind() is JsonValueKind.String && names.Contains((string)text!))
                        members[name] = Named((string)text!);
                    else
                        Rename(value);
                }
            }
        }
    }

    private static int Mebibytes() =>
        int.Parse(
            File.ReadLines("/proc/self/status")
                .First(l => l.StartsWith("VmHWM", StringComparison.Ordinal))
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)[1],
            CultureInfo.InvariantCulture
        ) / 1024;
}
