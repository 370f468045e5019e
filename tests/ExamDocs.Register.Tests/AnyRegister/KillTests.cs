namespace ExamDocs.Register.Tests;

public sealed class KillTests : Workplace
{
    /// <summary>
    /// Kills, without warning, five runs that are busy issuing, each after another short while, and looks at what is left.
    /// </summary>
    [Fact]
    public async Task Killed_at_any_moment_the_next_run_sets_things_right()
    {
        var told = new List<string>();
        for (var run = 0; run < 5; run++)
            told.AddRange(await RunAndKill(run));
        Assert.True(told.Count >= 15, $"Only {told.Count} documents were issued before the kills.");

        using var register = Open();
        Settle(register);
        var issued = register.Issued().Select(document => document.Number).ToHashSet(StringComparer.Ordinal);
        Assert.All(told, number => Assert.Contains(number, issued));
        Assert.Equal(told.Count, told.Distinct(StringComparer.Ordinal).Count());
        Assert.True(
            issued.Count - told.Count is >= 0 and <= 5 * KilledRun.MostAtOnce,
            "More came out than a killed run could not tell of."
        );
        AssertNoNumberLostOrReused(register, issued.Count + register.Voided().Count);
        AssertFolderEqualsRegister(register, Out);
    }

    [Fact]
    public async Task A_run_at_work_keeps_its_numbers_and_a_killed_one_loses_them()
    {
        using var process = KilledRun.Start(Database, Out, run: 0);
        Assert.NotNull(await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));
        using var register = Open();
        // Whatever it is just about to publish is its own.
        for (var look = 0; look < 20; look++)
            Assert.Empty(register.Recover());
        Assert.StartsWith("R-2026-", Issue(register, "beside it").Number, StringComparison.Ordinal);
        process.Kill();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Settle(register);
        AssertNoNumberLostOrReused(register, register.Issued().Count + register.Voided().Count);
        AssertFolderEqualsRegister(register, Out);
    }

    [Fact]
    public async Task What_a_killed_run_held_is_settled_and_what_a_living_one_holds_is_not()
    {
        using var living = Open();
        var begun = Take(living, "begun");
        using var process = KilledRun.Start(Database, Out, run: 0, documents: 0);
        var held = await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
        using var register = Open();
        Assert.Empty(register.Recover());
        process.Kill();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        var told = await UntilTold(register);
        Assert.Equal($"{held} is void: the run was interrupted before it was printed.", told);
        Assert.Equal("R-2026-000001", Assert.Single(register.Rows.Documents.Pending()).Document.Number);
        living.Publish(begun, Pdf("begun"), 1, "{}");
        AssertNoNumberLostOrReused(register, 2);
        AssertFolderEqualsRegister(register, Out);
    }

    private static async Task<string> UntilTold(DocumentRegister register)
    {
        for (var look = 0; look < 600; look++)
        {
            if (register.Recover() is { Count: > 0 } told)
                return Assert.Single(told);
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }
        throw new TimeoutException("The killed run is still taken for a living one.");
    }

    private async Task<List<string>> RunAndKill(int run)
    {
        using var process = KilledRun.Start(Database, Out, run);
        var told = new List<string>();
        while (told.Count < 3 && await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } number)
            told.Add(number);
        // Not in step with the lines: the kill falls somewhere between two documents.
        await Task.Delay(TimeSpan.FromMilliseconds(7 * (run + 1)), TestContext.Current.CancellationToken);
        process.Kill();
        var rest = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        // The last line counts only where it is whole.
        told.AddRange(rest.Split('\n')[..^1]);
        return told;
    }
}
