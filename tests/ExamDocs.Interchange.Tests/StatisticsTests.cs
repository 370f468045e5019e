using System.Globalization;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Statistics;

namespace ExamDocs.Interchange.Tests;

/// <summary>
/// R with its package survival, and statsmodels with SciPy, come to the same numbers: over lifetimes with ties, with censoring and
/// with later entry, and over counts from none to many. First run with R 4.2.2, survival 3.5-3, statsmodels 0.13.5, SciPy 1.10.1.
/// </summary>
public sealed class StatisticsTests : IDisposable
{
    private const double Close = 1e-9;

    private static readonly (int Count, int Total)[] Counts =
    [
        (0, 1),
        (0, 20),
        (1, 1),
        (1, 29),
        (7, 20),
        (15, 148),
        (81, 263),
        (999, 1000),
        (1000, 1000),
    ];

    private static readonly int[][] Tables =
    [
        [20, 5, 10, 15],
        [1, 0, 0, 1],
        [0, 3, 4, 0],
        [90, 2, 5, 3],
        [1, 1, 0, 250],
    ];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-statistics");

    private readonly List<(string Set, string Group, Lifetime Life)> _lives = [.. Enumerable.Range(1, 12).SelectMany(Lives)];

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void R_comes_to_the_same_numbers()
    {
        Assert.SkipUnless(
            File.Exists("/usr/bin/Rscript") && Directory.Exists("/usr/lib/R/library/survival"),
            "R with its package survival is not installed here"
        );
        var script = Path.Combine(AppContext.BaseDirectory, "r", "statistics.R");
        var said = Lines(Programs.Run(_folder.FullName, "/usr/bin/Rscript", "--vanilla", script, LivesFile(), CountsFile()));
        Assert.Equal(["count", "logrank", "median", "step"], said.Select(l => l[0]).Distinct().Order(StringComparer.Ordinal));
        Assert.All(said, l =>
        {
            switch (l[0])
            {
                case "step":
                    CheckStep(l, withInterval: true);
                    break;
                case "median":
                    CheckMedian(l);
                    break;
                case "logrank":
                    CheckLogRank(l);
                    break;
                default:
                    CheckCount(l);
                    break;
            }
        });
        Assert.Equal(Steps, said.Count(l => l[0] is "step"));
    }

    [Fact]
    public void Statsmodels_comes_to_the_same_numbers()
    {
        Assert.SkipUnless(Directory.Exists("/usr/lib/python3/dist-packages/statsmodels"), "statsmodels is not installed here");
        var script = Path.Combine(AppContext.BaseDirectory, "python", "counted.py");
        var said = Lines(Programs.Run(_folder.FullName, "/usr/bin/python3", script, LivesFile(), CountsFile(), TablesFile()));
        Assert.Equal(["count", "kappa", "logrank", "slope", "step"], said.Select(l => l[0]).Distinct().Order(StringComparer.Ordinal));
        Assert.All(said, l =>
        {
            switch (l[0])
            {
                case "step":
                    CheckStep(l, withInterval: false);
                    break;
                case "logrank":
                    CheckLogRank(l);
                    break;
                case "slope":
                    var times = _lives.FindAll(x => x.Set == l[1]).ConvertAll(x => x.Life.Time);
                    Same(l[2], TheilSen.Through([.. Enumerable.Range(0, times.Count).Select(n => (double)n)], times)!.Slope);
                    break;
                case "kappa":
                    var table = l[1].Split(' ').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToList();
                    Same(l[2], new CohenKappa(table[0], table[1], table[2], table[3]).Value!.Value);
                    break;
                default:
                    CheckCount(l);
                    break;
            }
        });
        Assert.Equal(Steps, said.Count(l => l[0] is "step"));
    }

    private void CheckStep(string[] said, bool withInterval)
    {
        var step = Assert.Single(Curve(said[1], said[2]).Steps, s => Math.Abs(s.Age - Number(said[3])) < Close);
        Assert.Equal((Number(said[4]), Number(said[5])), (step.AtRisk, step.Events));
        Same(said[6], step.Share);
        if (step.StandardError is not { } error)
            return;
        Same(said[7], error);
        if (!withInterval)
            return;
        Same(said[8], step.Interval!.Low);
        Same(said[9], step.Interval.High);
    }

    /// <summary>Where exactly one half is left R gives the middle between two ages, we the first of them.</summary>
    private void CheckMedian(string[] said)
    {
        var curve = Curve(said[1], said[2]);
        if (curve.Steps.Any(s => Math.Abs(s.Share - 0.5) < Close))
            return;
        Same(said[3], curve.Median);
        Same(said[4], curve.MedianInterval.Low);
        Same(said[5], curve.MedianInterval.High);
    }

    private void CheckLogRank(string[] said)
    {
        var test = LogRank.Of(Group(said[1], "a"), Group(said[1], "b"))!;
        Same(said[2], test.Statistic);
        Same(said[3], test.Probability);
        if (said.Length < 6)
            return;
        Same(said[4], test.Expected);
        Same(said[5], test.ExpectedOther);
    }

    private static void CheckCount(string[] said)
    {
        var (count, total) = ((int)Number(said[1]), (int)Number(said[2]));
        var wilson = new Proportion(count, total).Wilson;
        Same(said[3], wilson.Low);
        Same(said[4], wilson.High);
        if (said.Length < 7)
            return;
        Same(said[5], PoissonCount.Garwood(count).Low);
        Same(said[6], PoissonCount.Garwood(count).High);
    }

    private static void Same(string said, double? ours)
    {
        if (said is "NA")
            Assert.Null(ours);
        else
            Assert.True(
                Math.Abs(Number(said) - ours!.Value) <= Close * Math.Max(1, Math.Abs(ours.Value)),
                $"{said} is not {ours.Value.ToString("R", CultureInfo.InvariantCulture)}"
            );
    }

    private KaplanMeier Curve(string set, string group) => new(Group(set, group));

    private List<Lifetime> Group(string set, string group) => [.. _lives.Where(l => l.Set == set && l.Group == group).Select(l => l.Life)];

    /// <summary>How many steps all curves have.</summary>
    private int Steps => _lives.DistinctBy(l => (l.Set, l.Group)).Sum(l => Curve(l.Set, l.Group).Steps.Count);

    /// <summary>Whole months, so that many are alike; every third set is watched from later ages on.</summary>
    private static IEnumerable<(string Set, string Group, Lifetime Life)> Lives(int set)
    {
        var random = new Random(set);
        var size = 5 + (set * 6);
        for (var n = 0; n < size; n++)
        {
            var (entry, time) = (set % 3 == 0 ? random.Next(0, 12) : 0, random.Next(13, 13 + (set * 3)));
            yield return ($"s{set}", n % 2 == 0 ? "a" : "b", new Lifetime(time, random.NextDouble() < 0.6, entry));
        }
    }

    private string LivesFile() =>
        Written(
            "set,group,entry,time,event",
            _lives.Select(l => $"{l.Set},{l.Group},{Said(l.Life.Entry)},{Said(l.Life.Time)},{(l.Life.IsEvent ? 1 : 0)}")
        );

    private string CountsFile() => Written("count,total", Counts.Select(c => FormattableString.Invariant($"{c.Count},{c.Total}")));

    private string TablesFile() => Written("a,b,c,d", Tables.Select(t => string.Join(',', t)));

    private string Written(string heading, IEnumerable<string> lines)
    {
        var file = Path.Combine(_folder.FullName, heading.Replace(',', '-') + ".csv");
        File.WriteAllLines(file, lines.Prepend(heading));
        return file;
    }

    private static List<string[]> Lines(string output) =>
        [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split(','))];

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static string Said(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
