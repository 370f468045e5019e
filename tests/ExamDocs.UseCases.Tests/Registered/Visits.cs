using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>Visits of one connector, cut out of the example, and a register that takes them in.</summary>
internal sealed class Visits : IDisposable
{
    public const string Item = "CON-02";

    public static readonly LocalDate Today = new(2027, 12, 31);

    private readonly Workspace _workspace = new();
    private int _files;

    public string Register => _workspace.Register;

    public string Out => _workspace.Out;

    /// <param name="reference">Of the visit.</param>
    /// <param name="day">Of the examination and the report.</param>
    /// <param name="withdraw">The examiner withdraws the connector; otherwise finds it fit.</param>
    public static JsonObject Visit(string reference, string day, bool withdraw = false)
    {
        var record = Workspace.Example().Only(Item);
        var visit = record["visit"]!.AsObject();
        (visit["reference"], visit["examinedOn"], visit["reportedOn"]) = (reference, day, day);
        record.Item(Item)["lastExamined"] = "2025-11-13";
        var examination = record.ExaminationOf(Item);
        examination.Remove("examinedOn");
        examination.Remove("nextBy");
        examination["conclusion"] = withdraw ? "withdraw" : "fit";
        return record;
    }

    public static JsonObject Released(JsonObject record, string? document = null)
    {
        var day = (string)record["visit"]!["examinedOn"]!;
        var release = new JsonObject
        {
            ["item"] = Item,
            ["by"] = "ex1",
            ["on"] = day,
            ["grounds"] = "Gate spring renewed by the maker",
        };
        if (document is not null)
            release["document"] = document;
        else
            release["withdrawnOn"] = "2026-05-11";
        record["releases"] = new JsonArray(release);
        return record;
    }

    public string File(JsonObject record) => _workspace.Write(record, FormattableString.Invariant($"visit-{++_files}.json"));

    public ImportResult Import(JsonObject record) => ImportVisits.Run([File(record)], Register, Today, KnownRules.BuiltIn);

    /// <summary>Visits of other items, in one run: in the log their entries fill whole blocks.</summary>
    public void ImportOthers(int from, int count, params IEnumerable<JsonObject> before) =>
        ImportVisits.Run(
            [.. before.Concat(Enumerable.Range(from, count).Select(Another)).Select(File)],
            Register,
            Today,
            KnownRules.BuiltIn
        );

    private static JsonObject Another(int n)
    {
        var record = Visit(FormattableString.Invariant($"W-{n}"), "2026-06-02");
        record.Item(Item)["serial"] = FormattableString.Invariant($"ZZ-{n}-X");
        foreach (var (list, member) in new[] { ("items", "id"), ("examinations", "item") })
        {
            foreach (var row in record[list]!.AsArray())
                row![member] = FormattableString.Invariant($"ZQ-{n}-X");
        }
        return record;
    }

    public DeterminedItem Check(JsonObject record) =>
        CheckAgainstRegister.All([File(record)], Today, KnownRules.BuiltIn, Register)[0].Visit!.Items.Single(i => i.Item.Id is Item);

    public Task<IssueResult> IssueAsync(
        JsonObject record,
        string? only = null,
        string? reason = null,
        Action<RunProgress>? progress = null
    ) =>
        IssueDocuments.RunAsync(
            _workspace.Request(File(record)) with
            {
                Today = Today,
                Only = only is null ? [] : [only],
                Reason = reason,
                Progress = progress,
            },
            TestContext.Current.CancellationToken
        );

    public Task<IssueResult> IssueTogetherAsync(params string[] files) =>
        IssueDocuments.RunAsync(_workspace.Request(files[0]) with { Inputs = files, Today = Today }, TestContext.Current.CancellationToken);

    public string FileOf(Issued issued) => _workspace.FileOf(issued);

    /// <summary>Verifies a file against the register, on the day after which nothing of these visits is in date; or on another.</summary>
    public async Task<VerifiedFile> VerifyAsync(string file, LocalDate? on = null)
    {
        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Browser = OpenBrowser.Instance,
                Files = [file],
                RegisterPath = Register,
                Now = (on ?? Today).At(LocalTime.Noon).InUtc().ToInstant(),
            },
            TestContext.Current.CancellationToken
        );
        return Assert.Single(verified);
    }

    public void Dispose() => _workspace.Dispose();
}
