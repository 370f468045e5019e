using System.Diagnostics;

namespace ExamDocs.Faults.Tests;

/// <summary>When to kill a run: after a while that is drawn, or on sight of something that it has just done.</summary>
internal sealed class Moment(Random random, TimeSpan usual, string register, string folder)
{
    /// <summary>What is aimed at, in turn; the first is any time from the start to a little beyond a usual run's end.</summary>
    public static readonly string[] Aims = ["any", "register being written", "file being written", "file in place", "list being written"];

    /// <summary>Waits for the moment, or until the run has ended.</summary>
    public async Task WaitAsync(string aim, Process run, CancellationToken cancellation)
    {
        if (aim == Aims[0])
        {
            var ended = run.WaitForExitAsync(cancellation);
            await Task.WhenAny(ended, Task.Delay(usual * (random.NextDouble() * 1.1), cancellation));
            return;
        }
        var before = Names("*.pdf");
        // The one seen may be any of a run's: let some go by.
        for (var sights = random.Next(1, 4); sights > 0 && !run.HasExited; sights--)
            Spin(run, () => IsSeen(aim, before), random.Next(0, 3));
    }

    private void Spin(Process run, Func<bool> isSeen, int thenMilliseconds)
    {
        while (!run.HasExited && !isSeen())
            Thread.Yield();
        if (thenMilliseconds > 0)
            Thread.Sleep(thenMilliseconds);
    }

    private bool IsSeen(string aim, int before) =>
        aim switch
        {
            "register being written" => File.Exists(register + "-journal") || File.Exists(register + "-wal"),
            "file being written" => Names(".*.tmp") > 0,
            "file in place" => Names("*.pdf") > before,
            "list being written" => Names("documents.json.*") > 0,
            _ => throw new ArgumentOutOfRangeException(nameof(aim), aim, "Not one of the aims."),
        };

    private int Names(string pattern) =>
        Directory.Exists(folder) ? Directory.EnumerateFiles(folder, pattern, new EnumerationOptions { AttributesToSkip = 0 }).Count() : 0;
}
