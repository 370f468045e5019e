using ExamDocs.Cli.Tests;
using ExamDocs.Proof.Tests;
using ExamDocs.Register.Tests;

namespace ExamDocs.Faults.Tests;

/// <summary>
/// The disk that holds the documents, with the register or without it, is full after so many pages, from none to as many as
/// the run needs, so that it is full at each place where the run writes; then it is given room, and the run goes on.
/// </summary>
public sealed class FullDiskIssueTests : IDisposable
{
    private const int Page = 4;
    private const int Ample = 65_536;

    private readonly Examdocs _examdocs = new();
    private readonly SortedSet<string> _said = new(StringComparer.Ordinal);
    private string _register = "";

    private string Disk => _examdocs.At("disk");

    private string Out => Path.Combine(Disk, "out");

    [Theory]
    [InlineData("disk")]
    [InlineData("elsewhere")]
    public async Task Full_at_any_place_it_says_so_and_goes_on_once_there_is_room(string registerFolder)
    {
        var data = Directory.CreateDirectory(_examdocs.At(registerFolder)).FullName;
        _examdocs.With("XDG_DATA_HOME", data);
        _register = Path.Combine(data, "examdocs", "examdocs.db");
        var visit = Kit.Withdrawn("F", items: 2).Write(_examdocs, "visit.json");
        var enough = await NeededAsync(visit);
        var steps = Math.Min(Effort.Of(5, int.MaxValue), enough / Page);
        var stopped = 0;
        for (var step = 1; step <= steps; step++)
        {
            if (await FillAsync(visit, Math.Max(Page, (int)((long)enough * step / (steps + 1) / Page * Page))))
                stopped++;
        }
        Assert.True(stopped >= steps / 2, "The disk was seldom full.");
        TestContext.Current.TestOutputHelper?.WriteLine(
            FormattableString.Invariant($"{steps} sizes up to {enough} KiB, {stopped} runs stopped. Said: {string.Join(" | ", _said)}")
        );
    }

    /// <summary>What is there after a run with room for all, in KiB: the least that can do.</summary>
    private async Task<int> NeededAsync(string visit)
    {
        using var disk = new SmallDisk(Disk, Ample);
        Assert.Equal(0, (await IssueAsync(visit)).ExitCode);
        return Directory
            .EnumerateFiles(Disk, "*", SearchOption.AllDirectories)
            .Sum(f => (int)(new FileInfo(f).Length / 1024 / Page + 1) * Page);
    }

    /// <returns>True where the disk was too small.</returns>
    private async Task<bool> FillAsync(string visit, int kibibytes)
    {
        if (File.Exists(_register))
            File.Delete(_register);
        using var disk = new SmallDisk(Disk, kibibytes);
        var run = await IssueAsync(visit);
        Assert.True(run.ExitCode is 0 or 3, FormattableString.Invariant($"{kibibytes} KiB: {run.ExitCode} {run.Err}"));
        if (run.ExitCode == 3)
            AssertClear(run.Err);
        disk.GrowTo(Ample);
        var next = await IssueAsync(visit);
        Assert.True(next.ExitCode == 0, FormattableString.Invariant($"{kibibytes} KiB: {next.Err}"));
        Assert.Equal(2, Aftermath.AssertSound(_register, Out).Count);
        return run.ExitCode == 3;
    }

    private void AssertClear(string said)
    {
        var line = said.Split('\n', StringSplitOptions.RemoveEmptyEntries).Single(l => l.StartsWith("stopped: ", StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
        Assert.Matches("(?i)no space|is full|not enough space", line);
        _said.Add(line.Replace(_examdocs.Folder, "…", StringComparison.Ordinal));
    }

    private Task<Run> IssueAsync(string visit) => _examdocs.RunAsync(["issue", visit, "--quiet", "--out", Out, .. Kit.OnlyLabels]);

    public void Dispose() => _examdocs.Dispose();
}
