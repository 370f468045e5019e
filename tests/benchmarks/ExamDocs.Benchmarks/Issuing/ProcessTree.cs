using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace ExamDocs.Benchmarks.Issuing;

/// <summary>What a command took, with every process that it started.</summary>
/// <param name="Seconds">By the clock.</param>
/// <param name="CpuSeconds">User and system, of all processes.</param>
/// <param name="Mebibytes">The most that all held at one time, what they share counted once; looked at every fifth of a second.</param>
internal sealed record Cost(double Seconds, double CpuSeconds, double Mebibytes);

/// <summary>
/// Runs a command and counts all its processes. A browser leaves processes behind when it ends: this one becomes the parent of such
/// orphans, so that the kernel adds up the time of every one.
/// </summary>
internal static class ProcessTree
{
    private const int BecomeParentOfOrphans = 36;
    private const int DoNotWait = 1;
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(200);

    /// <summary>At first it is looked at more often, since what is short would be missed.</summary>
    private static readonly TimeSpan BetweenFirstLooks = TimeSpan.FromMilliseconds(40);

    private static readonly TimeSpan First = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan PatienceWithOrphans = TimeSpan.FromSeconds(10);

    /// <exception cref="InvalidOperationException">It failed, or left processes that do not end.</exception>
    public static Cost Run(ProcessStartInfo command)
    {
        if (Control(BecomeParentOfOrphans, 1, 0, 0, 0) != 0)
            throw new InvalidOperationException("this process cannot become the parent of orphans");
        var before = CpuOfEndedChildren();
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(command)!;
        var most = 0.0;
        do most = Math.Max(most, MebibytesOfDescendants());
        while (!process.WaitForExit(watch.Elapsed < First ? BetweenFirstLooks : BetweenLooks));
        var seconds = watch.Elapsed.TotalSeconds;
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"it ended with {process.ExitCode}");
        WaitForOrphans();
        return new Cost(seconds, CpuOfEndedChildren() - before, most);
    }

    private static void WaitForOrphans()
    {
        var watch = Stopwatch.StartNew();
        // 0: some are still there; -1: there is none left.
        while (Wait(-1, out _, DoNotWait) is var ended and >= 0)
        {
            if (watch.Elapsed > PatienceWithOrphans)
                throw new InvalidOperationException("it left processes that do not end");
            if (ended == 0)
                Thread.Sleep(10);
        }
    }

    private static double CpuOfEndedChildren()
    {
        // Fields 16 and 17 of proc(5), the first two being taken off; in hundredths of a second.
        var fields = Fields("/proc/self/stat")!;
        return (Number(fields[13]) + Number(fields[14])) / 100.0;
    }

    private static double MebibytesOfDescendants()
    {
        var parents = Directory
            .EnumerateDirectories("/proc")
            .Select(Path.GetFileName)
            .Where(name => char.IsAsciiDigit(name![0]))
            .Select(name => (Id: (int)Number(name!), Fields: Fields($"/proc/{name}/stat")))
            .Where(p => p.Fields is not null)
            .ToLookup(p => (int)Number(p.Fields![1]), p => p.Id);
        var (kibibytes, open) = (0L, new Stack<int>(parents[Environment.ProcessId]));
        while (open.TryPop(out var id))
        {
            kibibytes += KibibytesOf(id);
            foreach (var child in parents[id])
                open.Push(child);
        }
        return kibibytes / 1024.0;
    }

    /// <summary>Its share of what it holds together with others; all of it where the kernel does not tell.</summary>
    private static long KibibytesOf(int id)
    {
        try
        {
            return Sum($"/proc/{id}/smaps_rollup", "Pss:");
        }
        catch (UnauthorizedAccessException)
        {
            return Sum($"/proc/{id}/status", "VmRSS:");
        }
    }

    private static long Sum(string file, string name)
    {
        try
        {
            return File.ReadLines(file)
                .Where(l => l.StartsWith(name, StringComparison.Ordinal))
                .Sum(l => Number(l.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1]));
        }
        catch (IOException)
        {
            // It has ended meanwhile.
            return 0;
        }
    }

    /// <summary>What follows the program's name, which may hold blanks; null where the process has ended.</summary>
    private static string[]? Fields(string stat)
    {
        try
        {
            var text = File.ReadAllText(stat);
            return text[(text.LastIndexOf(')') + 2)..].Split(' ');
        }
        catch (IOException)
        {
            return null;
        }
    }

    private static long Number(string text) => long.Parse(text, CultureInfo.InvariantCulture);

    [DllImport("libc", EntryPoint = "prctl")]
    private static extern int Control(int what, nuint value, nuint unused3, nuint unused4, nuint unused5);

    [DllImport("libc", EntryPoint = "waitpid")]
    private static extern int Wait(int process, out int status, int options);
}
