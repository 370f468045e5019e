using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>What a run tells of itself, and what is out when somebody stops it.</summary>
public sealed class RunProgressTests : IDisposable
{
    private readonly Workspace _workspace = new();

    public void Dispose() => _workspace.Dispose();

    [Fact]
    public async Task Stages_come_in_their_order_and_every_document_is_counted_over_all_visits()
    {
        var told = new List<RunProgress>();
        var result = await IssueDocuments.RunAsync(
            _workspace.Request(Input("V-1", "H-1"), Input("V-2", "H-2")) with
            {
                Progress = told.Add,
            },
            TestContext.Current.CancellationToken
        );
        Assert.Equal(
            [RunStage.Reading, RunStage.Checking, RunStage.Printing, RunStage.Writing],
            told.Select(t => t.Stage).Distinct().ToList()
        );
        var printing = told.Where(t => t.Stage is RunStage.Printing).ToList();
        Assert.Equal(4, result.Documents.Count);
        Assert.All(printing, t => Assert.Equal(4, t.Of));
        Assert.Equal([0, 1, 2, 3, 4], printing.Select(t => t.Done).Distinct());
        Assert.Equal("printing: 3 of 4", printing.First(t => t.Done == 3).Said.Text);
    }

    [Fact]
    public async Task Refusals_are_counted_as_they_become_known()
    {
        var record = Workspace.Example();
        var told = new List<RunProgress>();
        var result = await IssueDocuments.RunAsync(
            _workspace.Request(_workspace.Write(record)) with
            {
                Progress = told.Add,
            },
            TestContext.Current.CancellationToken
        );
        Assert.NotEmpty(result.Refused);
        Assert.Equal(result.Refused.Count, told[^1].Refused);
        Assert.Contains(told, t => t.Said.Text.EndsWith($", {result.Refused.Count} refused", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Stopped_the_document_in_hand_is_finished_and_listed_and_no_number_is_void()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var input = Input("V-1", "H-1", "H-2", "H-3");
        // Asked while the first is done and the second is not yet begun.
        void StopAtFirst(RunProgress progress)
        {
            if (progress is { Stage: RunStage.Printing, Done: 1 })
                stop.Cancel();
        }
        var stopped = await IssueDocuments.RunAsync(_workspace.Request(input) with { Progress = StopAtFirst }, stop.Token);
        Assert.Equal((RunFailure.ByUser, 1), (stopped.Failure, stopped.Documents.Count));
        Assert.True(File.Exists(_workspace.FileOf(stopped.Documents[0])));
        Assert.Contains(
            stopped.Documents[0].Number,
            await File.ReadAllTextAsync(Path.Combine(_workspace.Out, "documents.json"), TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
        var whole = await _workspace.IssueAsync(input);
        Assert.Null(whole.Failure);
        Assert.Equal([false, true, true, true], whole.Documents.Select(d => d.IssuedNow));
        using var register = DocumentRegister.Open(_workspace.Register, Workspace.Today);
        Assert.Empty(register.Voided());
    }

    private string Input(string reference, params string[] harnesses)
    {
        var visit = harnesses.Aggregate(new StoryVisit(reference, "2026-05-11", "Alder Vale Ltd"), (v, id) =>
            v.Harness(id, $"S{id[^1]}00")
        );
        var path = Path.Combine(_workspace.Folder, $"{reference}.json");
        File.WriteAllText(path, visit.Json);
        return path;
    }
}
