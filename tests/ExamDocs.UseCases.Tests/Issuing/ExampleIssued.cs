using ExamDocs.Core.Determination;
using ExamDocs.UseCases.Tests.Issuing;

[assembly: AssemblyFixture(typeof(ExampleIssued))]

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>The example issued once, as a schedule and item by item, for all tests that look at the result.</summary>
public sealed class ExampleIssued : IAsyncLifetime
{
    private readonly Workspace _schedule = new();
    private readonly Workspace _perItem = new();

    internal IssueResult Result { get; private set; } = null!;

    internal IssueResult PerItem { get; private set; } = null!;

    internal DeterminedVisit Visit => Result.Inputs[0].Visit!;

    internal string Folder => _schedule.Out;

    internal string File(Issued issued) => _schedule.FileOf(issued);

    internal string PerItemFile(Issued issued) => _perItem.FileOf(issued);

    public async ValueTask InitializeAsync()
    {
        Result = await IssueDocuments.RunAsync(_schedule.Request(Workspace.ExampleWorkbook), CancellationToken.None);
        PerItem = await IssueDocuments.RunAsync(_perItem.Request(Workspace.ExampleJson) with { PerItem = true, Only = "report" }, CancellationToken.None);
    }

    public ValueTask DisposeAsync()
    {
        _schedule.Dispose();
        _perItem.Dispose();
        return ValueTask.CompletedTask;
    }
}
