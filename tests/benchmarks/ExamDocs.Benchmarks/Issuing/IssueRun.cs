using System.Globalization;
using System.Text;
using ExamDocs.Documents.ReadingBack;
using NodaTime;

namespace ExamDocs.Benchmarks.Issuing;

/// <summary>What is to be issued: reports of one item each, labels, or one report of many items.</summary>
internal sealed record IssueCase(string Word, int Count)
{
    public bool IsSchedule => Word is "schedule";

    public string Kind => Word is "due-label" ? "due-label" : "report";

    public int Documents => IsSchedule ? 1 : Count;

    public string Options => IsSchedule ? "--only report" : $"--per-item --only {Kind}";

    /// <param name="text">For example report:100.</param>
    public static IssueCase Parse(string text) =>
        text.Split(':') is ["report" or "due-label" or "schedule", var count]
            ? new(text.Split(':')[0], int.Parse(count, NumberStyles.None, CultureInfo.InvariantCulture))
            : throw new ArgumentException($"{text} is none of report:N, due-label:N, schedule:N");
}

/// <summary>
/// Issues documents from end to end with the built program, and beside it prints the same pages in the ways that somebody would try
/// first; each way a command of its own, in turns. The processes that each starts are counted, the browser's too.
/// </summary>
internal static class IssueRun
{
    private const int ItemsOfVisit = 100;

    /// <param name="root">Of the repository; the command line is built there.</param>
    /// <param name="rounds">How often each way is taken; medians are printed.</param>
    /// <param name="cases">One table for each.</param>
    public static async Task AllAsync(string root, int rounds, IReadOnlyList<IssueCase> cases)
    {
        foreach (var what in cases)
        {
            var folder = Directory.CreateTempSubdirectory("examdocs-issue-").FullName;
            try
            {
                await OneAsync(root, folder, rounds, what);
            }
            finally
            {
                Directory.Delete(folder, recursive: true);
            }
        }
    }

    private static async Task OneAsync(string root, string folder, int rounds, IssueCase what)
    {
        var today = LocalDate.FromDateTime(DateTime.Today);
        var visits = InventedVisits.Write(
            Path.Combine(folder, "visits"),
            what.Count,
            what.IsSchedule ? what.Count : ItemsOfVisit,
            today.PlusDays(-7)
        );
        var ways = Way.All.Where(w => w.IsInstalled).ToList();
        var pages = await PagesAsync(
            folder,
            what,
            visits,
            today,
            [.. ways.Skip(1).Select(w => Math.Min(w.Most, what.Documents)).Distinct()]
        );
        var results = ways.ToDictionary(w => w, _ => new List<Result>());
        for (var round = 0; round < rounds; round++)
        {
            foreach (var way in ways)
            {
                var count = Math.Min(way.Most, what.Documents);
                var variables = new Dictionary<string, string>(StringComparer.Ordinal)
                {
                    ["PROGRAM"] = Path.Combine(root, "src/ExamDocs.Cli/bin/Release/net10.0/ExamDocs.Cli"),
                    ["OPTIONS"] = what.Options,
                    ["HOME"] = folder,
                    ["VISITS"] = Path.Combine(folder, "visits"),
                    ["HTML"] = pages.GetValueOrDefault(count, ""),
                    ["DRAWINGS"] = Drawings(folder, count),
                };
                if (Measure(way, variables, Path.Combine(folder, "out"), count) is { } result)
                    results[way].Add(result);
            }
        }
        IssueTable.Print(what, rounds, results);
        foreach (var way in Way.All.Except(ways))
            Console.WriteLine($"skipped, not installed: {way.Name}");
    }

    private static string Drawings(string folder, int count) => Path.Combine(folder, FormattableString.Invariant($"drawings-{count}"));

    /// <summary>Folders of pages to print, one for each number of them.</summary>
    private static async Task<Dictionary<int, string>> PagesAsync(
        string folder,
        IssueCase what,
        IReadOnlyList<string> visits,
        LocalDate today,
        IReadOnlyList<int> counts
    )
    {
        var folders = counts.ToDictionary(c => c, c => Directory.CreateDirectory(Path.Combine(folder, $"html-{c}")).FullName);
        var made = 0;
        await foreach (var html in SameHtml.OfAsync(what, visits, today))
        {
            if (made++ == counts.Max())
                break;
            foreach (var (_, to) in folders.Where(f => made <= f.Key))
                await File.WriteAllTextAsync(Path.Combine(to, FormattableString.Invariant($"{made:000000}.html")), html, Encoding.UTF8);
        }
        var drawn = Math.Min(Way.All[^1].Most, what.Documents);
        await DrawnDirectly.PrepareAsync(folders[drawn], Drawings(folder, drawn));
        return folders;
    }

    /// <returns>Null where it failed, which is said and does not count.</returns>
    private static Result? Measure(Way way, Dictionary<string, string> variables, string outFolder, int count)
    {
        Directory.CreateDirectory(outFolder);
        var log = $"{outFolder}.log";
        variables["OUT"] = outFolder;
        try
        {
            var cost = ProcessTree.Run(way.Start(variables, log));
            var files = Directory.GetFiles(outFolder, "*.pdf");
            if (files.Length != count)
                throw new InvalidOperationException(FormattableString.Invariant($"it made {files.Length} documents instead of {count}"));
            return new Result(cost, count, files.Sum(f => new FileInfo(f).Length), files.Sum(f => PdfPages.Count(File.ReadAllBytes(f))));
        }
        catch (InvalidOperationException e)
        {
            Console.WriteLine($"FAILED {way.Name}: {e.Message}\n{(File.Exists(log) ? File.ReadAllText(log) : "")}");
            return null;
        }
        finally
        {
            Directory.Delete(outFolder, recursive: true);
        }
    }
}
