using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

public sealed class RunsAtOnceTests : Workplace
{
    [Fact]
    public async Task Eight_runs_at_once_take_every_number_once_and_leave_none_out()
    {
        var processes = new[]
        {
            KilledRun.Start(Database, Out, 0, DocumentsForEachRun),
            KilledRun.Start(Database, Out, 1, DocumentsForEachRun),
        };
        var runs = processes.Select(p => Numbers(p)).Concat(Enumerable.Range(2, 6).Select(run => OnItsOwnThread(() => Numbers(run))));
        var told = (await Task.WhenAll(runs.ToList())).SelectMany(numbers => numbers).ToList();

        var count = 8 * DocumentsForEachRun;
        Assert.All(processes, p => Assert.Equal(0, p.ExitCode));
        Assert.Equal(
            Enumerable.Range(1, count).Select(n => new DocumentNumber('R', 2026, n).ToString()),
            told.Order(StringComparer.Ordinal)
        );
        using var register = Open();
        Assert.Empty(register.Recover());
        AssertNoNumberLostOrReused(register, count);
        AssertFolderEqualsRegister(register, Out);
        Assert.Equal(count + 1, register.Checkpoint()!.Size);
    }

    [Fact]
    public async Task First_runs_at_once_make_the_tables_once()
    {
        using var together = new Barrier(8);
        var numbers = await Task.WhenAll(
            Enumerable
                .Range(0, 8)
                .Select(run =>
                    OnItsOwnThread(() =>
                    {
                        together.SignalAndWait(TestContext.Current.CancellationToken);
                        using var register = Open();
                        return Issue(register, $"{run}").Number;
                    })
                )
                .ToList()
        );
        Assert.Equal(8, numbers.Distinct(StringComparer.Ordinal).Count());
        using var after = Open();
        AssertNoNumberLostOrReused(after, 8);
        Assert.Empty(after.Check());
    }

    [Fact]
    public void Two_runs_work_side_by_side_and_neither_takes_what_the_other_has_begun()
    {
        using var first = Open();
        var begun = Take(first, "a");
        using var second = Open();
        Assert.Empty(second.Recover());
        Assert.Contains(
            "Another run is issuing the same report",
            Assert.Throws<DocumentInProgressException>(() => Take(second, "a")).Message,
            StringComparison.Ordinal
        );
        Assert.Equal("R-2026-000002", Issue(second, "b").Number);
        first.Publish(begun, Pdf("a"), 1, "{}");
        Assert.NotNull(second.FindIssued("a"));
        AssertFolderEqualsRegister(second, Out);
    }

    [Fact]
    public async Task Of_runs_that_want_the_same_document_one_gets_it()
    {
        Open().Dispose();
        var got = await Task.WhenAll(
            Enumerable
                .Range(0, 6)
                .Select(_ =>
                    OnItsOwnThread(() =>
                    {
                        using var register = Open();
                        try
                        {
                            Issue(register, "the same");
                            return 1;
                        }
                        catch (DocumentInProgressException)
                        {
                            return 0;
                        }
                    })
                )
                .ToList()
        );
        Assert.Equal(1, got.Sum());
        using var after = Open();
        AssertNoNumberLostOrReused(after, 1);
    }

    private List<string> Numbers(int run)
    {
        using var register = Open();
        return [.. Enumerable.Range(0, DocumentsForEachRun).Select(n => Issue(register, FormattableString.Invariant($"{run}/{n}")).Number)];
    }

    private static async Task<List<string>> Numbers(System.Diagnostics.Process process)
    {
        var said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return [.. said.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Trim())];
    }

    private static Task<T> OnItsOwnThread<T>(Func<T> work) =>
        Task.Factory.StartNew(work, TestContext.Current.CancellationToken, TaskCreationOptions.LongRunning, TaskScheduler.Default);
}
