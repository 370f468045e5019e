using System.Diagnostics;
using ExamDocs.Cli.Tests;
using ExamDocs.Proof.Tests;
using ExamDocs.Register;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Work;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>Workers in processes of their own that are killed at their work: each document is out once, and no number is missing.</summary>
public sealed class KilledWorkerTests : WorkplaceOfWork
{
    private readonly Examdocs _examdocs = new(apart: true);
    private readonly List<Process> _workers = [];

    [Fact]
    public async Task What_a_killed_worker_leaves_another_ends()
    {
        using var work = Work();
        await EnqueueAsync(items: 20, "--only", "due-label");
        var killed = Begin();
        await Until(() => CountIssued() > 0 || killed.HasExited);
        killed.Kill();
        await EndAsync(Begin("--until-empty"));
        AssertAllOnce(work, documents: 20);
    }

    /// <summary>
    /// Four workers; two of them at a time are killed at random moments, again and again, and others take their places. The bytes go to
    /// the place that EXAMDOCS_PROOF_CONTENT names, a bucket for example, else into the database.
    /// </summary>
    [Fact]
    public async Task Of_thousands_none_is_lost_or_doubled_however_often_workers_are_killed()
    {
        var items = Effort.Of(0, 2500);
        Assert.SkipWhen(items == 0, "With EXAMDOCS_PROOF=full, or a number of items.");
        using var work = Work();
        if (Environment.GetEnvironmentVariable("EXAMDOCS_PROOF_CONTENT") is { Length: > 0 } place)
        {
            using var register = Open();
            register.MoveContent(place);
        }
        await EnqueueAsync(items, "--per-item");
        var (random, kills) = (new Random(4711), 0);
        var clock = Stopwatch.StartNew();
        for (var n = 0; n < 4; n++)
            Begin();
        while (!work.IsIdle(CurrentVersion))
        {
            await SomeAreIssuedAsync(work, random, most: items / 6);
            foreach (var worker in _workers.Where(w => !w.HasExited).OrderBy(_ => random.Next()).Take(2).ToList())
            {
                worker.Kill();
                kills++;
            }
            while (_workers.Count(w => !w.HasExited) < 4)
                Begin();
        }
        AssertAllOnce(work, documents: 2 * items);
        var voided = Registered(register => register.Voided().Count);
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{2 * items} documents in {Registered(r => r.ContentPlace)}, {kills} workers killed, {voided} numbers void, "
                + $"{clock.Elapsed.TotalMinutes:0.0} minutes"
        );
        Assert.True(kills > 0);
    }

    /// <summary>Waits for some more documents, some minutes at most, and then a little longer.</summary>
    private async Task SomeAreIssuedAsync(SharedWork work, Random random, int most)
    {
        var (clock, enough) = (Stopwatch.StartNew(), CountIssued() + random.Next(1, most + 1));
        while (CountIssued() < enough && clock.Elapsed < TimeSpan.FromSeconds(300) && !work.IsIdle(CurrentVersion))
            await Task.Delay(TimeSpan.FromMilliseconds(200), TestContext.Current.CancellationToken);
        await Task.Delay(TimeSpan.FromMilliseconds(random.Next(1500)), TestContext.Current.CancellationToken);
    }

    private static string CurrentVersion => typeof(ExamDocs.UseCases.Commands.DoWork).Assembly.GetName().Version!.ToString(3);

    private void AssertAllOnce(SharedWork work, int documents)
    {
        var job = work.Listed(1)!;
        Assert.True(job.State == JobState.Done, $"{job.State}: {string.Join('\n', job.Said)}");
        Registered(register =>
        {
            var issued = register.Documents();
            Assert.Equal(documents, issued.Count);
            Assert.Equal(documents, issued.DistinctBy(d => (d.Kind, d.Items[0]), EqualityComparer<(string, string)>.Default).Count());
            Assert.All(issued, d => Assert.Equal(d.Sha256, Sha256Hex.Of(register.Content(d.Issued()))));
            foreach (var letter in issued.Select(d => d.Number[0]).Distinct())
                Assert.Equal(Enumerable.Range(1, NumbersOf(register, letter).Count), NumbersOf(register, letter));
            Assert.Equal(issued.Select(d => d.Number).Order(StringComparer.Ordinal), work.DocumentsOf(1));
            // Numbers without a gap, bytes as logged, the log whole.
            Assert.Empty(register.Check());
            return 0;
        });
    }

    private static List<int> NumbersOf(DocumentRegister register, char letter) =>
        [
            .. register
                .Documents()
                .Select(d => d.Number)
                .Concat(register.Voided().Select(v => v.Number))
                .Where(n => n[0] == letter)
                .Select(n => DocumentNumber.TryParse(n, out var parsed) ? parsed.Sequence : 0)
                .Order(),
        ];

    private T Registered<T>(Func<DocumentRegister, T> ask)
    {
        using var register = DocumentRegister.OpenToRead(Database);
        return ask(register);
    }

    private int CountIssued()
    {
        using var connection = Connect();
        return (int)ExamDocs.Register.Storage.Sql.Number(connection, "SELECT count(*) FROM document WHERE state = 'issued'");
    }

    private async Task EnqueueAsync(int items, params string[] options)
    {
        var visit = ManyItems.Of(items).Write(_examdocs, "visit.json");
        var run = await _examdocs.RunAsync(["work", "enqueue", visit, .. options, "--quiet", "--register", Database]);
        Assert.True(run.ExitCode == 0, run.Out + run.Err);
    }

    private Process Begin(params string[] options)
    {
        var worker = _examdocs.Begin(["work", .. options, "--quiet", "--register", Database]);
        _workers.Add(worker);
        return worker;
    }

    private static async Task EndAsync(Process worker)
    {
        await worker.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(worker.ExitCode == 0, await worker.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
    }

    private static async Task Until(Func<bool> holds)
    {
        while (!holds())
            await Task.Delay(TimeSpan.FromMilliseconds(20), TestContext.Current.CancellationToken);
    }

    protected override void Dispose(bool disposing)
    {
        foreach (var worker in _workers)
        {
            if (!worker.HasExited)
                worker.Kill();
            worker.WaitForExit();
            worker.Dispose();
        }
        _examdocs.Dispose();
        base.Dispose(disposing);
    }
}
