using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using NodaTime;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// What another record has against an item, however it names it, stands against a document that says it may be used: in either order the
/// document is refused, or verifying and searching say so.
/// </summary>
public sealed class FoundAgainstLaterTests : IDisposable
{
    private const string Day = "2026-11-03";

    private static readonly LocalDate Today = new(2026, 11, 25);

    private static readonly StoryVisit Connector = Visit("V-1", Day).Connector("C-1", "B7");

    private static readonly StoryVisit Harness = Visit("V-1", Day).Harness("H-1", "H100").Bridge("RB-1", "Q100", i => i.On("H-1"));

    private static readonly Dictionary<string, (StoryVisit Fit, string Item, StoryVisit[] Others)> Cases = new(StringComparer.Ordinal)
    {
        ["a quarantine without a row of its own"] = (
            Connector,
            "C-1",
            [Visit("V-2", "2026-11-20").Connector("C-50", "B50").Disposed("C-1", "quarantined")]
        ),
        ["a bridge's quarantine without a row of its own"] = (
            Harness,
            "H-1",
            [Visit("V-2", "2026-11-20").Connector("C-50", "B50").Disposed("RB-1", "quarantined")]
        ),
        ["a quarantine after the day of its visit"] = (
            Connector,
            "C-1",
            [Visit("V-2", "2026-11-01").Connector("C-1", "B7", i => i.NotLookedAt()).Disposed("C-1", "quarantined", "2026-11-20")]
        ),
        ["sent for repair after the day of its visit"] = (
            Connector,
            "C-1",
            [Visit("V-2", "2026-11-01").Connector("C-1", "B7", i => i.NotLookedAt()).Disposed("C-1", "sent for repair", "2026-11-20")]
        ),
        ["a quarantine of the day before"] = (
            Connector,
            "C-1",
            [Visit("V-2", "2026-11-02").Connector("C-1", "B7", i => i.NotLookedAt()).Disposed("C-1", "quarantined")]
        ),
        ["lost under a new id"] = (
            Connector,
            "C-1",
            [Visit("V-2", "2026-11-10").Connector("C-99", null, i => i.Formerly("C-1").NotLookedAt("lost"))]
        ),
        ["lost on a later day under the same reference"] = (
            Connector,
            "C-1",
            [Visit("V-1", "2026-11-20").Connector("C-1", "B7", i => i.NotLookedAt("lost"))]
        ),
        ["sent for repair on a later day under the same reference"] = (
            Connector,
            "C-1",
            [Visit("V-1", "2026-11-20").Connector("C-1", "B7", i => i.NotLookedAt()).Disposed("C-1", "sent for repair")]
        ),
        ["lost under a new id that only a third record knows of"] = (
            Connector,
            "C-1",
            [
                Visit("V-0", "2026-06-04").Connector("C-1", "B7"),
                Visit("V-2", "2026-11-10").Connector("C-98", null, i => i.Formerly("C-1").Mark("K7")),
                Visit("V-3", "2026-11-20").Connector("C-98", null, i => i.NotLookedAt("lost")),
            ]
        ),
        ["its bridge lost"] = (Harness, "H-1", [Visit("V-2", "2026-11-10").Bridge("RB-1", "Q100", i => i.NotLookedAt("lost"))]),
        ["withdrawn under the user's own tag"] = (
            Visit("V-1", Day).HiredFrom("Fold Hire").Connector("C-1", "B7"),
            "C-1",
            [
                Visit("V-0", "2026-03-02").HiredFrom("Fold Hire").Connector("C-1", "B7"),
                Visit("V-2", "2026-06-01").Connector("T-4", "B7", i => i.Cut()),
            ]
        ),
    };

    private readonly Workspace _workspace = new();
    private int _files;

    public static TheoryData<string> Names => [.. Cases.Keys];

    public void Dispose() => _workspace.Dispose();

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Told_before_no_document_says_that_it_may_be_used(string name)
    {
        var (fit, item, others) = Cases[name];
        Array.ForEach(others, Import);
        await IssueAsync(fit);
        using var register = DocumentRegister.Open(_workspace.Register);
        Assert.DoesNotContain(register.Documents(), d =>
            d is { IsCurrent: true, Kind: "due-label" or "report" or "certificate" } && d.Items.Contains(item) && IsFit(d, item)
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Told_afterwards_searching_and_verifying_say_so(string name)
    {
        var (fit, item, others) = Cases[name];
        var label = (await IssueAsync(fit)).Documents.Single(d => d.Document.Kind is "due-label" && d.Document.Items.Contains(item));
        Array.ForEach(others, Import);
        Assert.DoesNotContain(FindItems.ByMarking(_workspace.Register, item, Today), i =>
            i.Id == item && i.Standing is Standing.InService or Standing.NotIssued
        );
        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Browser = OpenBrowser.Instance,
                Files = [_workspace.FileOf(label)],
                RegisterPath = _workspace.Register,
                Now = Today.At(LocalTime.Noon).InUtc().ToInstant(),
            },
            TestContext.Current.CancellationToken
        );
        Assert.NotEqual(Verdict.Valid, Assert.Single(verified).Verdict);
    }

    private static bool IsFit(Register.Model.DocumentStatus document, string item) =>
        document.Usable() is not { } usable || (usable.Any(u => u.Item == item) && document.EndedLines.All(l => l.Item != item));

    private Task<IssueResult> IssueAsync(StoryVisit visit) =>
        IssueDocuments.RunAsync(_workspace.Request(File(visit)) with { Today = Today }, TestContext.Current.CancellationToken);

    private void Import(StoryVisit visit) => ImportVisits.Run([File(visit)], _workspace.Register, Today, KnownRules.BuiltIn);

    private string File(StoryVisit visit)
    {
        var path = Path.Combine(_workspace.Folder, FormattableString.Invariant($"visit-{++_files}.json"));
        System.IO.File.WriteAllText(path, visit.Json);
        return path;
    }
}
