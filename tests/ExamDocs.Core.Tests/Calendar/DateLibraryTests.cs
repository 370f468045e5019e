using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using ExamDocs.Core.Calendar;
using NodaTime;

namespace ExamDocs.Core.Tests.Calendar;

/// <summary>An independent library in another language, date-fns (npm), adds months with the same results.</summary>
public sealed class DateLibraryTests
{
    private const int Drawn = 20_000;

    [Fact]
    public void Date_fns_adds_the_same_months()
    {
        var cases = CorrespondingDateTests
            .WorkedCases.Select(row => (Start: Parse(row.Data.Item1), Months: row.Data.Item2))
            .Concat(EveryMonthEnd())
            .Concat(Random())
            .ToList();
        var ours = cases.Select(c => Print(CorrespondingDate.AddMonths(c.Start, c.Months))).ToList();

        Assert.Equal(Ask(cases.Select(c => string.Create(CultureInfo.InvariantCulture, $"{Print(c.Start)} {c.Months}"))), ours);
        Assert.True(cases.Count > Drawn, "the cases drawn were compared");
    }

    /// <summary>The last four days of every month of a leap year and of the year after, with every interval in use.</summary>
    private static IEnumerable<(LocalDate Start, int Months)> EveryMonthEnd() =>
        from month in Enumerable.Range(0, 24)
        let first = new LocalDate(2024, 1, 1).PlusMonths(month)
        from back in Enumerable.Range(1, 4)
        from months in new[] { 1, 2, 3, 6, 12, 48, 1200 }
        select (first.PlusMonths(1).PlusDays(-back), months);

    private static IEnumerable<(LocalDate Start, int Months)> Random()
    {
        var random = new System.Random(20261125);
        return Enumerable.Range(0, Drawn).Select(_ => (new LocalDate(1900, 1, 1).PlusDays(random.Next(110_000)), random.Next(1200)));
    }

    private static IReadOnlyList<string> Ask(IEnumerable<string> lines)
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "Calendar", "npm");
        if (!Directory.Exists(Path.Combine(folder, "node_modules", "date-fns")))
            Run(folder, "npm", "ci --no-audit --no-fund", "");
        return Run(folder, "node", "months.mjs", string.Join('\n', lines) + "\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static string Run(string folder, string tool, string arguments, string input)
    {
        var start = new ProcessStartInfo(tool, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["TZ"] = "UTC";
        using var process = Start(start);
        var (output, error) = (
            process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken),
            process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken)
        );
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        if (!process.WaitForExit(TimeSpan.FromMinutes(2)))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"{tool} {arguments} did not end within two minutes");
        }
        Assert.True(process.ExitCode == 0, $"{tool} {arguments}: {error.Result}");
        return output.Result;
    }

    private static Process Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception e)
        {
            throw new InvalidOperationException($"{start.FileName} could not be started; bash .ci/setup.sh test installs it", e);
        }
    }

    private static LocalDate Parse(string day) => NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;

    private static string Print(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
