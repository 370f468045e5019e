using System.Runtime.InteropServices;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;

namespace ExamDocs.Cli.Tests;

/// <summary>A long <c>issue</c> tells how far it is on standard error alone, and Ctrl-C stops it between two documents.</summary>
public sealed class StoppedIssueTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    public void Dispose() => _examdocs.Dispose();

    [Fact]
    public async Task Standard_output_is_the_same_with_progress_and_without()
    {
        var visit = Visit(harnesses: 20);
        var said = await _examdocs.RunAsync("issue", visit, "--out", "out", "--only", "check-sheet");
        Assert.Equal(0, said.ExitCode);
        Assert.Equal(20, said.Err.Split("printing: ").Length - 1);
        Assert.Contains("printing: 20 of 20", said.Err, StringComparison.Ordinal);
        Assert.Contains("took ", said.Err, StringComparison.Ordinal);
        Assert.DoesNotContain("printing", said.Out, StringComparison.Ordinal);
        Assert.EndsWith($"20 documents in {_examdocs.At("out")}", said.Out.TrimEnd(), StringComparison.Ordinal);

        var quiet = await _examdocs.RunAsync("issue", visit, "--out", "out", "--only", "check-sheet", "--quiet");
        Assert.Equal((0, "", ""), (quiet.ExitCode, quiet.Out, quiet.Err));
    }

    [Fact]
    public async Task Ctrl_C_finishes_the_document_in_hand_lists_what_is_out_and_says_how_to_go_on()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There it is no signal.");
        Assert.SkipWhen(IsIgnored(Interrupt), "Begun in the background of a shell, whose programs ignore it.");
        using var apart = new Examdocs(apart: true);
        var visit = Visit(harnesses: 40, apart);
        using var run = apart.Begin("issue", visit, "--out", "out", "--only", "check-sheet");
        var cancellation = TestContext.Current.CancellationToken;
        var output = run.StandardOutput.ReadToEndAsync(cancellation);
        var errors = new List<string>();
        while (await run.StandardError.ReadLineAsync(cancellation) is { } line)
        {
            errors.Add(line);
            if (line.StartsWith("printing: ", StringComparison.Ordinal) && errors.Count(IsLine) == 1)
                Assert.Equal(0, Kill(run.Id, Interrupt));
        }
        await run.WaitForExitAsync(cancellation);

        Assert.Equal(3, run.ExitCode);
        Assert.Equal(
            "stopped by the user. What is listed is whole; run the command again to go on.",
            errors.Last(e => e.StartsWith("stopped", StringComparison.Ordinal))
        );
        var listed = (await output).Split('\n').Count(l => l.StartsWith("S-", StringComparison.Ordinal));
        Assert.InRange(listed, 2, 39);
        Assert.Equal(listed, Directory.GetFiles(apart.At("out"), "S-*.pdf").Length);

        var next = await apart.RunAsync("issue", visit, "--out", "out", "--only", "check-sheet");
        Assert.Equal(0, next.ExitCode);
        Assert.Equal(listed, next.Out.Split("(issued before)").Length - 1);
        // No number is void: forty documents have the first forty numbers.
        Assert.True(File.Exists(Directory.GetFiles(apart.At("out"), "S-*-000040.pdf").SingleOrDefault()));
        Assert.Equal(40, Directory.GetFiles(apart.At("out"), "S-*.pdf").Length);
    }

    private const int Interrupt = 2;

    /// <summary>What a process ignores, those that it begins ignore too.</summary>
    private static bool IsIgnored(int signal) =>
        File.Exists("/proc/self/status")
        && File.ReadLines("/proc/self/status").First(l => l.StartsWith("SigIgn:", StringComparison.Ordinal)) is var line
        && (Convert.ToUInt64(line["SigIgn:".Length..].Trim(), 16) >> (signal - 1) & 1) == 1;

    private static bool IsLine(string line) => line.StartsWith("printing: ", StringComparison.Ordinal);

    [DllImport("libc", EntryPoint = "kill")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Kill(int process, int signal);

    private string Visit(int harnesses, Examdocs? examdocs = null)
    {
        var visit = Enumerable
            .Range(1, harnesses)
            .Aggregate(new StoryVisit("V-1", "2026-05-11", "Alder Vale Ltd"), (v, n) => v.Harness($"H-{n}", $"S{100 + n}"));
        File.WriteAllText((examdocs ?? _examdocs).At("visit.json"), visit.Json);
        return "visit.json";
    }
}
