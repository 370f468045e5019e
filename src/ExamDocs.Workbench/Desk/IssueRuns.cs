using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Workbench.Desk;

/// <summary>Issues visits one after the other.</summary>
internal sealed class IssueRuns(WorkbenchRequest request, Who who) : IAsyncDisposable
{
    private readonly LongRuns<IssueResult> _runs = new();

    public LongRun<IssueResult>? Of(DeskVisit visit) => _runs.Of(visit.Id);

    /// <summary>Starts, unless it is at work already.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="perItem">One report for each item.</param>
    /// <param name="reason">Why an earlier version is corrected; null for nothing.</param>
    public void Start(DeskVisit visit, bool perItem, string? reason)
    {
        var run = New(visit);
        _runs.Start(visit.Id, run, stopping => RunAsync(visit, perItem, reason, run.Tell, stopping));
    }

    /// <summary>A run of a visit as it lies on the desk now.</summary>
    internal static LongRun<IssueResult> New(DeskVisit visit)
    {
        var stamp = visit.Stamp;
        return new(() => !string.Equals(stamp, visit.Stamp, StringComparison.Ordinal));
    }

    public ValueTask DisposeAsync() => _runs.DisposeAsync();

    private async Task<(IssueResult Result, string? Failure)> RunAsync(
        DeskVisit visit,
        bool perItem,
        string? reason,
        Action<RunProgress> told,
        CancellationToken stopping
    )
    {
        request.Register.MakeFolder();
        var result = await IssueDocuments.RunAsync(
            new IssueRequest
            {
                Inputs = visit.Inputs,
                OutFolder = visit.DocumentFolder,
                RegisterPath = request.Register.Place,
                Today = request.Today(),
                Rules = request.Rules,
                Style = who.Style(request.Now()),
                PerItem = perItem,
                Reason = reason,
                Progress = told,
            },
            stopping
        );
        return (result, result.Failure);
    }
}
