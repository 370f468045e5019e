using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.Workbench.Desk;

/// <summary>Takes out of use what notices name, one after the other.</summary>
internal sealed class RecallRuns(WorkbenchRequest request, Who who) : IAsyncDisposable
{
    private readonly LongRuns<SweepResult> _runs = new();

    public LongRun<SweepResult>? Of(KeptNotice notice) => _runs.Of(notice.Id);

    /// <summary>Starts, unless it is at work already.</summary>
    public void Start(KeptNotice notice)
    {
        var run = new LongRun<SweepResult>();
        _runs.Start(notice.Id, run, stopping => RunAsync(notice, run.Tell, stopping));
    }

    public ValueTask DisposeAsync() => _runs.DisposeAsync();

    private async Task<(SweepResult Result, string? Failure)> RunAsync(
        KeptNotice notice,
        Action<RunProgress> told,
        CancellationToken stopping
    )
    {
        var now = who.Now;
        var result = await SweepRecall.RunAsync(
            new SweepRequest
            {
                Notice = notice.Notice,
                RegisterPath = request.Register.Place,
                Today = request.Today(),
                OutFolder = notice.PaperFolder,
                Examiner = new Person
                {
                    Name = now.Name,
                    Address = Typed(now.Address),
                    Qualifications = Typed(now.Qualifications),
                },
                Rules = request.Rules,
                Style = who.Style(request.Now()),
                Progress = told,
            },
            stopping
        );
        return (result, result.Issued?.Failure);
    }

    private static string? Typed(string text) => text.Length > 0 ? text : null;
}
