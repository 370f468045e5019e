using System.Runtime.CompilerServices;
using System.Text;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Tests.Printing;

namespace ExamDocs.Documents.Tests.Finishing;

/// <summary>The example's report with two files in it.</summary>
internal static class FinishedReport
{
    public static readonly byte[] Record = Encoding.UTF8.GetBytes("{\"format\":\"examdocs/1\",\"note\":\"Grüße, Ελένη, 漢\"}\n");

    public static readonly byte[] Outcome = Encoding.UTF8.GetBytes("{\"outcome\":\"withdraw\"}");

    private static readonly ConditionalWeakTable<SharedBrowser, byte[]> Once = [];

    public static AttachedData[] Attached =>
        [new("outcome.json", "What was determined", Outcome), new("examdocs.json", "What was recorded", Record)];

    /// <summary>Finished once; nobody changes it.</summary>
    public static byte[] Of(SharedBrowser browser) => Once.GetValue(browser, Anew);

    public static byte[] Anew(SharedBrowser browser) => Finisher.Finish(browser.Report, Attached);
}
