using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>What falls due, and what may not be used and so stands apart. The six months of these visits are those of their regime.</summary>
public sealed class ListDueTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 11, 9);

    private readonly Workspace _workspace = new();
    private int _files;

    public void Dispose() => _workspace.Dispose();

    [Theory]
    [InlineData("2026-11-11", "2026-11-11", "RB-1 2026-11-11 NotIssued")]
    [InlineData("2026-11-12", "2026-12-31", "")]
    [InlineData("2026-11-10", "2026-11-10", "")]
    [InlineData("2026-01-01", "2027-12-31", "RB-1 2026-11-11 NotIssued")]
    public void Both_days_are_inside(string from, string to, string must)
    {
        Import(Bridge("2026-05-11"));
        Assert.Equal(must, Said(List(Day(from), Day(to)).Due));
    }

    /// <summary>The case that must never be listed as good, however its days lie.</summary>
    [Fact]
    public void What_may_not_be_used_stands_apart_and_is_never_among_what_falls_due()
    {
        Import(
            Visit("V-1", "2026-05-20")
                .Bridge("CUT", "Q1", i => i.Cut())
                .Bridge("DOUBT", "Q2", i => i.Doubt())
                .Bridge("HELD", "Q3", i => i.Forgotten())
                .Harness("GOOD", "Q4")
        );
        Import(Visit("V-2", "2026-05-01").Connector("LATE", "Q5"));
        var list = List(Day("2026-01-01"), Day("2027-12-31"));
        Assert.Equal("GOOD 2026-11-20 NotIssued", Said(list.Due));
        Assert.Equal("LATE 2026-11-01 Overdue; CUT  Withdrawn; DOUBT  Withdrawn; HELD  Held", Said(list.Apart));
    }

    [Fact]
    public void A_harness_whose_bridge_was_withdrawn_since_stands_apart_with_it()
    {
        Import(Visit("V-1", "2026-07-01").Harness("H-1", "H100").Bridge("RB-1", "Q100", i => i.On("H-1")));
        Assert.Equal("H-1 2027-01-01 NotIssued; RB-1 2027-01-01 NotIssued", Said(List(Day("2026-12-01"), Day("2027-02-01")).Due));
        Import(Visit("V-2", "2026-11-02").Bridge("RB-1", "Q100", i => i.On("H-1").Cut()));
        var list = List(Day("2026-12-01"), Day("2027-02-01"));
        Assert.Empty(list.Due);
        Assert.Equal(["H-1", "RB-1"], list.Apart.Select(i => i.Id));
    }

    [Fact]
    public void What_is_fit_until_a_day_falls_due_on_it()
    {
        Import(Bridge("2026-07-01", i => i.LaterDefect("2026-12-10")));
        var item = Assert.Single(List(Day("2026-12-01"), Day("2026-12-31")).Due);
        Assert.Equal((Day("2027-01-01"), Day("2026-12-09")), (item.NextBy, item.FallsDue));
    }

    /// <summary>After that day the harness may not be used either, whatever its own examination says.</summary>
    [Fact]
    public void A_harness_falls_due_with_the_bridge_on_it_where_that_comes_first()
    {
        Import(Visit("V-1", "2026-07-01").Harness("H-1", "H100").Bridge("RB-1", "Q100", i => i.On("H-1")));
        Import(Visit("V-2", "2026-11-02").Bridge("RB-1", "Q100", i => i.On("H-1").LaterDefect("2026-12-10")));
        var list = List(Day("2026-12-01"), Day("2027-02-01"));
        Assert.Equal("H-1 2026-12-09 NotIssued; RB-1 2026-12-09 NotIssued", Said(list.Due));
        Assert.All(VisitProposals.Of(list.Due, 28, new Dictionary<string, int>()), v => Assert.Equal(Day("2026-12-09"), v.By));
    }

    [Fact]
    public void A_harness_has_its_own_day_again_once_the_bridge_is_changed()
    {
        Import(Visit("V-1", "2026-07-01").Harness("H-1", "H100").Bridge("RB-1", "Q100", i => i.On("H-1").LaterDefect("2026-12-10")));
        Import(Visit("V-2", "2026-11-02").Harness("H-1", "H100").Bridge("RB-2", "Q101", i => i.On("H-1")).Renewed("H-1", "RB-1", "RB-2"));
        var list = List(Day("2026-12-01"), Day("2027-12-31"));
        Assert.Equal("H-1 2027-05-02 NotIssued; RB-1 2026-12-09 NotIssued; RB-2 2027-05-02 NotIssued", Said(list.Due));
    }

    [Fact]
    public void A_row_without_an_id_stands_apart()
    {
        Import(Visit("V-1", "2026-07-01").Harness("H-1", "H100").Bridge(null!, "Q100", i => i.Cut()));
        var list = List(Day("2026-12-01"), Day("2027-02-01"));
        Assert.Equal(["H-1"], list.Due.Select(i => i.Id));
        Assert.Equal((null, "Q100", Standing.Held), Assert.Single(list.Apart.Select(i => ((string?)i.Id, i.Serial, i.Standing))));
    }

    [Fact]
    public void Two_rows_under_one_id_stand_apart()
    {
        Import(Visit("V-1", "2026-07-01").Bridge("RB-1", "Q100").Bridge("RB-1", "Q200", i => i.Cut()));
        var list = List(Day("2026-01-01"), Day("2027-12-31"));
        Assert.Empty(list.Due);
        Assert.Equal(["RB-1"], list.Apart.Select(i => i.Id));
    }

    [Fact]
    public void A_visit_that_was_corrected_counts_as_corrected()
    {
        Import(Bridge("2026-07-01"));
        Import(Visit("V-2026-07-01", "2026-06-15").Bridge("RB-1", "Q100"));
        Assert.Equal("RB-1 2026-12-15 NotIssued", Said(List(Day("2026-11-01"), Day("2027-12-31")).Due));
    }

    [Theory]
    [InlineData("lost")]
    [InlineData("destroyed")]
    public void What_is_gone_is_never_due(string status)
    {
        Import(Bridge("2026-07-01"));
        Import(Visit("V-2", "2026-11-02").Bridge("RB-1", "Q100", i => i.NotLookedAt(status)));
        var list = List(Day("2026-11-01"), Day("2027-12-31"));
        Assert.Empty(list.Due);
        Assert.Equal([Standing.Withdrawn], list.Apart.Select(i => i.Standing));
    }

    [Fact]
    public void An_item_examined_again_is_due_by_the_latest_examination_only()
    {
        Import(Bridge("2026-05-11"));
        Import(Bridge("2026-11-02"));
        Assert.Equal("RB-1 2027-05-02 NotIssued", Said(List(Day("2026-11-01"), Day("2027-12-31")).Due));
    }

    [Fact]
    public void Items_come_by_employer_and_category_and_one_employer_may_be_asked_for()
    {
        Import(Visit("V-1", "2026-06-01").Harness("H-1", "A1").Connector("C-2", "A2").Connector("C-1", "A3"));
        Import(Visit("V-2", "2026-05-20", "Birch Lane Ltd").Harness("H-1", "B1"));
        var (from, to) = (Day("2026-11-01"), Day("2026-12-31"));
        Assert.Equal(
            ["Alder Vale Ltd C-1", "Alder Vale Ltd C-2", "Alder Vale Ltd H-1", "Birch Lane Ltd H-1"],
            List(from, to).Due.Select(i => $"{i.At.Employer} {i.Id}")
        );
        Assert.Equal(["B1"], List(from, to, "BIRCH LANE LIMITED").Due.Select(i => i.Serial));
        Assert.Equal("The yard", List(from, to).Due[0].At.Premises);
    }

    /// <summary>A calendar that was handed out has it: it must go from there.</summary>
    [Fact]
    public void A_day_on_which_nothing_falls_due_any_more_is_named()
    {
        Import(Visit("V-1", "2026-05-11").Harness("H-1", "A1").Harness("H-2", "A2"));
        Import(Visit("V-2", "2026-11-02").Harness("H-1", "A1"));
        Assert.Empty(List(Day("2026-11-01"), Day("2027-12-31")).NoLonger);
        Import(Visit("V-3", "2026-11-03").Harness("H-2", "A2"));
        Assert.Equal([Day("2026-11-11")], List(Day("2026-11-01"), Day("2027-12-31")).NoLonger.Select(e => e.Day));
    }

    [Fact]
    public void The_day_of_what_is_overdue_is_not_taken_for_one_that_is_gone()
    {
        Import(Bridge("2026-05-01"));
        var list = List(Day("2026-10-01"), Day("2026-12-31"));
        Assert.Equal("RB-1 2026-11-01 Overdue", Said(list.Apart));
        Assert.Empty(list.NoLonger);
    }

    private DueList List(LocalDate from, LocalDate to, string? employer = null) =>
        ListDue.In(new DueRequest(_workspace.Register, from, to, Today) { Employer = employer });

    private static string Said(IEnumerable<DueItem> items) =>
        string.Join("; ", items.Select(i => FormattableString.Invariant($"{i.Id} {i.FallsDue:uuuu-MM-dd} {i.Standing}")));

    private static LocalDate Day(string day) => NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;

    private static StoryVisit Bridge(string day, Func<StoryItem, StoryItem>? more = null) =>
        Visit($"V-{day}", day).Bridge("RB-1", "Q100", more);

    private void Import(StoryVisit visit)
    {
        var path = Path.Combine(_workspace.Folder, FormattableString.Invariant($"visit-{++_files}.json"));
        File.WriteAllText(path, visit.Json);
        ImportVisits.Run([path], _workspace.Register, Today, KnownRules.BuiltIn);
    }
}
