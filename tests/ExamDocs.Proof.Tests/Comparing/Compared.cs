using System.Text;
using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;
using NodaTime;

namespace ExamDocs.Proof.Tests.Comparing;

/// <summary>One record determined by both.</summary>
internal static class Compared
{
    /// <summary>Findings that the second evaluator reckons with itself; with any other error it may know less than the programme.</summary>
    private static readonly HashSet<string> Known =
    [
        "CON001",
        "CON003",
        "CON007",
        "CON009",
        "CON012",
        "CON015",
        "CON016",
        "CON019",
        "CON031",
        "CON032",
        "INT001",
        "INT005",
        "PAR001",
        "PAR002",
        "PAR007",
        "PAR008",
        "PAR009",
        "PAR010",
        "PAR011",
        "PAR014",
        "PAR015",
        "PAR016",
        "PAR017",
        "PAR018",
        "PAR021",
        "PAR026",
        "PAR027",
        "PAR028",
        "IDN001",
        "DAT003",
        "DAT004",
        "DAT005",
        "DAT012",
        "REN007",
        "REN010",
    ];

    public static DeterminedVisit Programme(string json, IReadOnlyList<PastHold> store, DateOnly asOf)
    {
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(json), "record.json");
        return Determine.Visit(read.Record!, read.Findings, Past(store), Day(asOf));
    }

    public static History Past(IReadOnlyList<PastHold> store) => new([.. store.Select(Past)]);

    public static IEnumerable<Pair> Pairs(Draft draft)
    {
        var json = draft.Json();
        var ours = Evaluator.Answers(json, draft.Store);
        var theirs = Programme(json, draft.Store, draft.AsOf).Items;
        if (ours.Count != theirs.Count)
        {
            throw new InvalidOperationException($"{ours.Count} items against {theirs.Count}.");
        }

        var lenient = theirs.Select((item, i) => ours[i].Unsure || item.Findings.Any(finding => IsUnknownError(finding, ours[i]))).ToList();
        for (var i = 0; i < ours.Count; i++)
        {
            yield return new Pair(ours[i], theirs[i], lenient[i] || ours[i].PartOf.Any(part => lenient[part]));
        }
    }

    /// <summary>
    /// Also one on an examination that does not decide, or on a person whom only such a one names: the rules in words name
    /// the deciding one only.
    /// </summary>
    private static bool IsUnknownError(Finding finding, Answer answer) =>
        finding.Severity == Severity.Error
        && (
            !Known.Contains(finding.Code)
            || (
                finding.Path.StartsWith("/examinations/", StringComparison.Ordinal)
                && !finding.Path.StartsWith($"/examinations/{answer.Examination}/", StringComparison.Ordinal)
            )
            || (finding.Path.StartsWith("/people/", StringComparison.Ordinal) && !answer.Codes.Contains("U3"))
        );

    private static PastWithdrawal Past(PastHold hold) =>
        new(hold.Item, hold.Document, Day(hold.On), hold.Codes, hold.Never) { Parts = hold.Parts };

    public static LocalDate Day(DateOnly day) => new(day.Year, day.Month, day.Day);
}
