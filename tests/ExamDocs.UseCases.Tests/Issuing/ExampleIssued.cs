using ExamDocs.Core.Determination;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.Issuing;

[assembly: AssemblyFixture(typeof(ExampleIssued))]

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>
/// The example issued once, as a schedule and item by item, for all tests that look at the result: of every category and
/// outcome one item, and whatever was renewed, of which nine have a report of their own; all sixty-two items with
/// EXAMDOCS_PROOF=full.
/// </summary>
public sealed class ExampleIssued : IDisposable
{
    private static readonly string[] OfEachKind =
    [
        "ABS-01",
        "ADJ-01",
        "BLK-01",
        "BRG-01",
        "BRG-02",
        "BRG-03",
        "BRG-04",
        "BRG-05",
        "BRG-08",
        "CLR-01",
        "CLR-03",
        "CON-01",
        "CON-07",
        "COR-01",
        "COR-02",
        "COV-01",
        "HAR-01",
        "HAR-02",
        "HAR-03",
        "HAR-04",
        "HAR-06",
        "HEL-01",
        "HEL-04",
        "LAN-01",
        "LAN-02",
        "LOW-01",
        "PUL-01",
        "PUL-02",
        "RGR-01",
        "SLG-01",
        "SLG-03",
        "SWV-01",
    ];

    private static readonly string[] Alone = ["ADJ-01", "BRG-02", "BRG-08", "CON-01", "COR-02", "HAR-04", "HEL-01", "LAN-02", "RGR-01"];

    private readonly Workspace _schedule = new();
    private readonly Workspace _perItem = new();
    private readonly Lazy<IssueResult> _result;
    private readonly Lazy<IssueResult> _resultPerItem;

    public ExampleIssued()
    {
        _result = new(() => Issued(_schedule.Request(Input(_schedule, OfEachKind))));
        _resultPerItem = new(() => Issued(_perItem.Request(Input(_perItem, Alone)) with { PerItem = true, Only = ["report"] }));
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

    private static string Input(Workspace workspace, string[] items) =>
        Effort.IsFull ? Workspace.ExampleWorkbook : workspace.Write(Workspace.Example().Only(items));

    // By the first test that asks, so that others need not wait; apart from its context, which would wait for itself.
    internal static IssueResult Issued(IssueRequest request) =>
        Task.Run(() => IssueDocuments.RunAsync(request, CancellationToken.None)).GetAwaiter().GetResult();
}
