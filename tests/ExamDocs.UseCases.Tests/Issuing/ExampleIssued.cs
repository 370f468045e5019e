using ExamDocs.Core.Determination;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.Issuing;

[assembly: AssemblyFixture(typeof(ExampleIssued))]

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>The example issued once, as a schedule and item by item, for all tests that look at the result.</summary>
public sealed class ExampleIssued : IDisposable
{
    private readonly Workspace _schedule = new();
    private readonly Workspace _perItem = new();
    private readonly Lazy<IssueResult> _result;
    private readonly Lazy<IssueResult> _resultPerItem;

    public ExampleIssued()
    {
        _result = new(() => Issued(_schedule.Request(Workspace.ExampleWorkbook)));
        _resultPerItem = new(() => Issued(_perItem.Request(Workspace.ExampleJson) with { PerItem = true, Only = "report" }));
    }

    internal IssueResult Result => _result.Value;

    internal IssueResult PerItem => _resultPerItem.Value;

    internal DeterminedVisit Visit => Result.Inputs[0].Visit!;

    internal string Folder => Result.Documents.Count > 0 ? _schedule.Out : throw new InvalidOperationException("nothing was issued");

    internal string File(Issued issued) => _schedule.FileOf(issued);

    internal string PerItemFile(Issued issued) => _perItem.FileOf(issued);

    public void Dispose()
    {
        _schedule.Dispose();
        _perItem.Dispose();
    }

    // By the first test that asks, so that others need not wait; apart from its context, which would wait for itself.
    internal static IssueResult Issued(IssueRequest request) =>
        Task.Run(() => IssueDocuments.RunAsync(request, CancellationToken.None)).GetAwaiter().GetResult();
}
