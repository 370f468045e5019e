using System.Text;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Tests.Printing;

namespace ExamDocs.Documents.Tests.Finishing;

/// <summary>The example's report with two files in it.</summary>
internal static class FinishedReport
{
    public static readonly byte[] Record = Encoding.UTF8.GetBytes("{\"format\":\"examdocs/1\",\"note\":\"Grüße, Ελένη, 漢\"}\n");

    public static readonly byte[] Outcome = Encoding.UTF8.GetBytes("{\"outcome\":\"withdraw\"}");

    public static AttachedData[] Attached =>
        [new("outcome.json", "What was determined", Outcome), new("examdocs.json", "What was recorded", Record)];

    public static byte[] Of(Press press) => Finisher.Finish(press.Report, Attached);
}
