using System.Globalization;

namespace ExamDocs.Benchmarks.Issuing;

/// <summary>What one way cost in one round.</summary>
internal sealed record Result(Cost Cost, int Documents, long Bytes, long Pages);

/// <summary>Prints a table of medians; the first way is what the ratios compare with.</summary>
internal static class IssueTable
{
    public static void Print(IssueCase what, int rounds, IReadOnlyDictionary<Way, List<Result>> results)
    {
        var ours = results.First().Value;
        if (ours.Count == 0)
            return;
        Console.WriteLine();
        Console.WriteLine(
            $"{what.Word}, {what.Count} {(what.IsSchedule ? "items in one" : "of one item each")}; medians of {rounds} rounds"
        );
        Row("", "documents", "per s", "clock x", "CPU s each", "CPU x", "most MiB", "kB each", "pages");
        foreach (var (way, its) in results.Where(r => r.Value.Count > 0))
        {
            var (clock, cpu) = (Median(its, Clock), Median(its, Cpu));
            Row(
                way.Name,
                Text(its[0].Documents, "0"),
                Text(1 / clock, "0.00"),
                Text(clock / Median(ours, Clock), "0.00"),
                Text(cpu, "0.0000"),
                Text(cpu / Median(ours, Cpu), "0.00"),
                Text(Median(its, r => r.Cost.Mebibytes), "0"),
                Text(Median(its, r => r.Bytes / 1000.0 / r.Documents), "0.0"),
                Text((double)its[0].Pages / its[0].Documents, "0.##")
            );
        }
    }

    private static double Clock(Result result) => result.Cost.Seconds / result.Documents;

    private static double Cpu(Result result) => result.Cost.CpuSeconds / result.Documents;

    private static double Median(List<Result> results, Func<Result, double> of)
    {
        var sorted = results.Select(of).Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static void Row(string name, params IEnumerable<string> values) =>
        Console.WriteLine($"{name, -50}{string.Concat(values.Select(v => v.PadLeft(11)))}");
}
