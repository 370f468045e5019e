using System.Diagnostics;
using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Tests.Hostile;
using ExamDocs.UseCases.Commands;
using NodaTime;

namespace ExamDocs.Benchmarks;

/// <summary>Checks every hostile input in a process of its own, and prints what each cost.</summary>
internal static class HostileRun
{
    private const int SecondsAllowed = 5;
    private const int MebibytesAllowed = 300;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(120);

    /// <summary>In the child: checks one input, and prints what was said and the most memory held.</summary>
    public static void One(string path)
    {
        var read = CheckRecord.Of(path, new LocalDate(2026, 5, 12));
        var peak = File.ReadLines("/proc/self/status")
            .First(l => l.StartsWith("VmHWM", StringComparison.Ordinal))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)[1];
        var said = read.Unreadable
            ?? string.Create(
                CultureInfo.InvariantCulture,
                $"{read.Visit!.Items.Count} items, {read.Visit.Items.Count(i => i.Outcome is Outcome.Withdraw)} withdrawn, "
                    + $"{read.Visit.Findings.Count} findings"
            );
        using var self = Process.GetCurrentProcess();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{peak}\t{self.TotalProcessorTime.TotalSeconds}\t{said}"));
    }

    /// <param name="only">Part of the names of those to run; empty for all.</param>
    /// <returns>How many cost more than is allowed.</returns>
    public static int All(string only)
    {
        var over = 0;
        Console.WriteLine($"{"input", -62}{"CPU s", 7}{"MiB", 7}  said");
        foreach (var input in HostileCorpus.WithFolders.Where(i => i.Name.Contains(only, StringComparison.OrdinalIgnoreCase)))
        {
            var (seconds, mebibytes, said) = Run(input);
            var tooMuch = seconds > SecondsAllowed || mebibytes > MebibytesAllowed;
            over += tooMuch ? 1 : 0;
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Cut(input.Name, 61), -62}{seconds, 7:0.0}{mebibytes, 7:0}{(tooMuch ? " !" : "  ")}{Cut(said, 90)}"
                )
            );
        }
        Console.WriteLine($"{over} cost more than {SecondsAllowed} s of CPU or {MebibytesAllowed} MiB");
        return over;
    }

    private static (double Seconds, double Mebibytes, string Said) Run(HostileInput input)
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-hostile-");
        try
        {
            var path = Path.Combine(folder.FullName, input.File);
            input.Make(path);
            using var child = Process.Start(
                new ProcessStartInfo(Environment.ProcessPath!, ["hostile-one", path]) { RedirectStandardOutput = true }
            )!;
            if (!child.WaitForExit(Patience))
            {
                var (seconds, held) = (child.TotalProcessorTime.TotalSeconds, child.PeakWorkingSet64);
                child.Kill();
                child.WaitForExit();
                return (seconds, held / 1048576d, "not done after two minutes");
            }
            return child.StandardOutput.ReadToEnd().Trim().Split('\t', 3) is [var peak, var spent, var said]
                ? (double.Parse(spent, CultureInfo.InvariantCulture), int.Parse(peak, CultureInfo.InvariantCulture) / 1024d, said)
                : (double.PositiveInfinity, 0, "no answer");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Cut(string text, int length) => text.Length <= length ? text : text[..length];
}
