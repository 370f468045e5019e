using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Registered.Visits;
using Outcome = ExamDocs.Core.Records.Outcome;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What was put in quarantine, sent for repair or lost in one record is so in the next, as it is within one record.</summary>
public sealed class PutAsideTests : IDisposable
{
    private readonly Visits _visits = new();
    private readonly Workspace _workspace = new();
    private int _files;

    public void Dispose()
    {
        _visits.Dispose();
        _workspace.Dispose();
    }

    /// <summary>As within one record. A repair that an item was sent for before it was examined may be over.</summary>
    [Theory]
    [InlineData("quarantined", Outcome.Undetermined)]
    [InlineData("sent for repair", Outcome.Fit)]
    public void An_item_in_quarantine_by_an_earlier_record_is_not_fit_without_a_release(string action, Outcome outcome)
    {
        _visits.Import(Aside(action));
        Assert.Equal(outcome, _visits.Check(Visit("V-2", "2026-11-02")).Outcome);
    }

    [Theory]
    [InlineData("2026-06-13", Outcome.Fit)]
    [InlineData("2026-06-11", Outcome.Undetermined)] // before the quarantine
    public void A_release_ends_the_quarantine(string on, Outcome outcome)
    {
        _visits.Import(Aside("quarantined"));
        var next = Visit("V-2", "2026-11-02");
        next["releases"] = new JsonArray(
            new JsonObject
            {
                ["item"] = Item,
                ["by"] = (string?)next["people"]![0]!["id"],
                ["on"] = on,
                ["grounds"] = "dropped; examined on a bench",
            }
        );
        Assert.Equal(outcome, _visits.Check(next).Outcome);
    }

    [Fact]
    public async Task Its_label_is_not_vouched_for()
    {
        var label = (await _visits.IssueAsync(Visit("V-0", "2026-05-11"))).Documents.Single(d => d.Document.Kind is "due-label");
        _visits.Import(Aside("quarantined"));
        Assert.Equal(Standing.Held, Assert.Single(FindItems.ByMarking(_visits.Register, Item, new(2026, 7, 1))).Standing);
        var verified = await _visits.VerifyAsync(_visits.FileOf(label), new(2026, 7, 1));
        Assert.NotEqual(Verdict.Valid, verified.Verdict);
    }

    [Theory]
    [InlineData("quarantined")]
    [InlineData("sent for repair")]
    [InlineData("sent-for-repair")] // misspelt, so that it could not be determined
    [InlineData("lost")]
    public void A_harness_is_not_fit_with_a_bridge_that_was_put_aside_or_lost_and_that_no_renewal_took_off(string what)
    {
        Import(Story.Visit("V-1", "2026-07-01").Harness("H-1", "H100").Bridge("RB-1", "Q100", i => i.On("H-1")));
        var aside = Story.Visit("V-2", "2026-08-01").Bridge("RB-1", "Q100", i => i.On("H-1").NotLookedAt(what is "lost" ? what : "in-use"));
        Import(what is "lost" ? aside : aside.Disposed("RB-1", what));
        Assert.NotEqual(Standing.InService, FindItems.ByMarking(_workspace.Register, "H-1", Day)[0].Standing);
        var file = File(Story.Visit("V-9", "2026-11-02").Harness("H-1", "H100"));
        var harness = CheckAgainstRegister.All([file], Day, KnownRules.BuiltIn, _workspace.Register)[0].Visit!.Items.Single();
        Assert.NotEqual(Outcome.Fit, harness.Outcome);
    }

    private static readonly NodaTime.LocalDate Day = new(2026, 11, 9);

    private static JsonObject Aside(string action)
    {
        var record = Visit("V-1", "2026-06-12");
        record["examinations"]!.AsArray().Clear();
        record["disposals"] = new JsonArray(
            new JsonObject
            {
                ["item"] = Item,
                ["action"] = action,
                ["by"] = "Ada Fenn",
                ["on"] = "2026-06-12",
            }
        );
        return record;
    }

    private void Import(StoryVisit visit) => ImportVisits.Run([File(visit)], _workspace.Register, Day, KnownRules.BuiltIn);

    private string File(StoryVisit visit)
    {
        var path = Path.Combine(_workspace.Folder, FormattableString.Invariant($"visit-{++_files}.json"));
        System.IO.File.WriteAllText(path, visit.Json);
        return path;
    }
}
