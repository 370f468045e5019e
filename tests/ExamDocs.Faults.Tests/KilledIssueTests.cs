using System.Diagnostics;
using System.Globalization;
using ExamDocs.Cli.Tests;
using ExamDocs.Proof.Tests;

namespace ExamDocs.Faults.Tests;

/// <summary>
/// The program is killed without warning, again and again, and started again each time on the same register and folder, so
/// that recoveries are cut short as well. Every so often a run is left to come to its end, and everything must be right.
/// </summary>
public sealed class KilledIssueTests : IDisposable
{
    private const int KillsBetweenLooks = 25;
    private const int ExitCodeOfKilled = 128 + 9;

    private readonly Examdocs _examdocs = new(apart: true);
    private readonly Dictionary<string, int> _kills = new(StringComparer.Ordinal);
    private readonly Random _random = new(20260512);
    private int _records;
    private int _items;
    private string _record = "";

    private string Out => _examdocs.At("out");

    [Fact]
    public async Task Killed_at_any_moment_the_next_run_finishes_or_voids_every_number()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "No process can be killed by a signal here.");
        // Browsers keep their profiles in there, so that what is left of them can be told from others'.
        _examdocs.With("TMPDIR", Directory.CreateDirectory(_examdocs.At("tmp")).FullName);
        var wanted = Effort.Of(6, 1000);
        NextRecord();
        var watch = Stopwatch.StartNew();
        await RunToTheEndAsync();
        var moment = new Moment(_random, watch.Elapsed, _examdocs.DefaultRegister, Out);
        var runs = 0;
        while (_kills.Values.Sum() < wanted)
        {
            Assert.True(runs++ < (wanted * 4) + 20, "Most runs came to their end before they were killed.");
            if (runs % 3 == 1)
                NextRecord();
            if (await RunAndKillAsync(moment, Moment.Aims[runs % Moment.Aims.Length]) && _kills.Values.Sum() % KillsBetweenLooks == 0)
                await RunToTheEndAsync();
        }
        NextRecord();
        await RunToTheEndAsync();
        Tell(runs);
    }

    /// <summary>Every other record corrects the one before, so that labels are replaced and set apart.</summary>
    private void NextRecord()
    {
        var version = (_records++ % 2) + 1;
        if (version == 1)
            _items = _random.Next(1, 4);
        var name = FormattableString.Invariant($"K{(_records + 1) / 2}");
        _record = Kit.Withdrawn(name, _items, version).Write(_examdocs, FormattableString.Invariant($"{name}-{version}.json"));
    }

    /// <returns>True where it was killed, false where it had come to its end before.</returns>
    private async Task<bool> RunAndKillAsync(Moment moment, string aim)
    {
        var cancellation = TestContext.Current.CancellationToken;
        using var run = _examdocs.Begin(["issue", _record, "--out", "out", .. Kit.OnlyLabels]);
        var said = run.StandardError.ReadToEndAsync(cancellation);
        await moment.WaitAsync(aim, run, cancellation);
        run.Kill();
        await run.WaitForExitAsync(cancellation);
        Assert.True(run.ExitCode is 0 or ExitCodeOfKilled, run.ExitCode is ExitCodeOfKilled ? "" : await said);
        if (run.ExitCode == 0)
            return false;
        _kills[aim] = _kills.GetValueOrDefault(aim) + 1;
        return true;
    }

    private async Task RunToTheEndAsync()
    {
        var run = await _examdocs.RunAsync(["issue", _record, "--out", "out", .. Kit.OnlyLabels]);
        Assert.True(run.ExitCode == 0, run.Err);
        Aftermath.AssertSound(_examdocs.DefaultRegister, Out);
        Assert.Empty(await RunProcesses.LeftAsync(_examdocs.Folder, TestContext.Current.CancellationToken));
    }

    private void Tell(int runs)
    {
        var issued = Aftermath.AssertSound(_examdocs.DefaultRegister, Out);
        Assert.NotEqual(0, Replaced());
        TestContext.Current.TestOutputHelper?.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{runs} runs, {_kills.Values.Sum()} killed "
                    + $"({string.Join(", ", _kills.Select(k => FormattableString.Invariant($"{k.Key} {k.Value}")))}); "
                    + $"{issued.Count} documents issued, {Replaced()} replaced; {Directory.GetDirectories(_examdocs.At("tmp")).Length} browser profiles "
                    + $"left in the temporary folder"
            )
        );
    }

    private int Replaced() =>
        Directory.Exists(Path.Combine(Out, "replaced")) ? Directory.GetFiles(Path.Combine(Out, "replaced")).Length : 0;

    public void Dispose() => _examdocs.Dispose();
}
