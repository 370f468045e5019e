using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>What a pack is about, and as of when.</summary>
public sealed class GatherPackTests : IDisposable
{
    private readonly PackStory _story = new PackStory().InOrder();

    public void Dispose() => _story.Dispose();

    [Fact]
    public void Only_what_the_register_knew_by_the_day_counts()
    {
        var late = _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1", i => i.Cut()), "2026-06-10");
        _story.Report(late, "2026-06-10", "C-1");
        Assert.Equal(["H-1", "RB-1"], Ids("2026-06-09"));
        Assert.Equal(["C-1", "H-1", "RB-1"], Ids("2026-06-10"));
        // A report that was issued later than its visit was stored, too.
        Assert.Equal(["no-document-in-date H-1", "no-document-in-date RB-1"], _story.Gaps("2026-05-11"));
        Assert.Empty(_story.Gaps("2026-05-12"));
    }

    /// <summary>What withdrew it later must not make it look withdrawn earlier, nor the other way round.</summary>
    [Fact]
    public void A_withdrawal_counts_from_the_day_on_which_it_was_stored()
    {
        _story.Import(Visit("V-2", "2026-05-20").Harness("H-1", "A1", i => i.Cut()), "2026-05-21");
        Assert.True(_story.Gather("2026-05-20").Contents.Items.Single(i => i.Item.Id is "H-1").IsInService);
        var now = _story.Gather("2026-05-21").Contents.Items.Single(i => i.Item.Id is "H-1");
        Assert.Equal((false, "withdrawn"), (now.IsInService, now.Standing));
    }

    [Fact]
    public void A_document_replaced_later_was_current_then()
    {
        var first = _story.Issue(1, "2026-05-13", "notice", ["H-1"]);
        var second = _story.Issue(1, "2026-05-20", "notice", ["H-1"], null, first);
        Assert.Contains(first, Numbers("2026-05-19"));
        Assert.DoesNotContain(second, Numbers("2026-05-19"));
        Assert.Contains(second, Numbers("2026-05-20"));
        Assert.DoesNotContain(first, Numbers("2026-05-20"));
    }

    [Fact]
    public void Of_labels_with_the_next_date_only_the_latest_is_enclosed_and_every_report()
    {
        var label = _story.Issue(1, "2026-05-12", "due-label", ["H-1"]);
        Assert.Contains(label, Numbers("2026-06-01"));
        var visit = _story.Import(Visit("V-2", "2026-05-20").Harness("H-1", "A1"), "2026-05-20");
        var report = _story.Report(visit, "2026-05-20", "H-1");
        var newer = _story.Issue(visit, "2026-05-20", "due-label", ["H-1"]);
        Assert.Equal([newer, "R-2026-000001", report], Numbers("2026-06-01").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Employer_premises_and_items_narrow_it_down_however_they_are_spelt()
    {
        var visit = _story.Import(Visit("V-2", "2026-05-20", "Birch Lane Ltd").Harness("H-9", "A9"), "2026-05-20");
        _story.Report(visit, "2026-05-20", "H-9");
        Assert.Equal(["H-1", "RB-1"], Ids("2026-06-01"));
        Assert.Equal(["H-9"], _story.Gather(ask: q => q with { Employer = "BIRCH LANE LIMITED" }).Contents.Items.Select(i => i.Item.Id));
        Assert.Equal(["H-1", "RB-1"], _story.Gather(ask: q => q with { Premises = "the Yard" }).Contents.Items.Select(i => i.Item.Id));
        Assert.Equal(
            ["H-1", "RB-1"],
            _story.Gather(ask: q => q with { Premises = "1 Some Lane, Norshire" }).Contents.Items.Select(i => i.Item.Id)
        );
        Assert.Equal(["RB-1"], _story.Gather(ask: q => q with { Items = ["rb 1"] }).Contents.Items.Select(i => i.Item.Id));
    }

    /// <summary>A name misspelt once takes kit out of the pack; whoever builds it is told which.</summary>
    [Fact]
    public void Kit_that_was_recorded_last_for_somebody_else_is_named()
    {
        Assert.Empty(_story.Gather().Elsewhere);
        _story.Import(Visit("V-2", "2026-05-20", "Alder Vail Ltd").Bridge("RB-1", "B1", i => i.NotLookedAt()), "2026-05-20");
        Assert.Equal(["RB-1"], _story.Gather().Elsewhere);
        Assert.DoesNotContain("RB-1", Ids("2026-06-01"));
    }

    [Fact]
    public void What_nobody_has_is_refused_and_not_packed_empty()
    {
        Assert.Contains("Nobody", _story.TryGather(ask: q => q with { Employer = "Nobody" }).Refused, StringComparison.Ordinal);
        Assert.Contains("X-77", _story.TryGather(ask: q => q with { Items = ["H-1", "X-77"] }).Refused, StringComparison.Ordinal);
        Assert.NotNull(_story.TryGather(ask: q => q with { Premises = "Elsewhere" }).Refused);
        Assert.NotNull(_story.TryGather("2026-05-10").Refused);
    }

    [Fact]
    public void How_long_reports_are_kept_is_the_regime_s_word()
    {
        var kept = Assert.Single(_story.Gather().Contents.Retention);
        Assert.Equal("V-1", kept.Reference);
        Assert.Contains("two years at least", Assert.Single(kept.Rules).Words, StringComparison.Ordinal);
    }

    private string?[] Ids(string asOf) => [.. _story.Gather(asOf).Contents.Items.Select(i => i.Item.Id)];

    private string[] Numbers(string asOf) => [.. _story.Gather(asOf).Contents.Documents.Select(d => d.Number)];
}
