using System.Text.Json.Nodes;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Tests.Rules;
using static ExamDocs.Core.Tests.Rules.RuleCase;

namespace ExamDocs.Core.Tests.Findings;

/// <summary>What follows from another finding names it; nothing follows from what is less grave.</summary>
public sealed class FindingCausesTests
{
    /// <summary>Slips of one cause, with the one finding that stands by itself.</summary>
    private static readonly Dictionary<string, (string Root, Action<JsonNode> Make)> OneCause = new(StringComparer.Ordinal)
    {
        ["a state misspelt"] = ("CON016 /examinations/2/observations/0/state", With("/examinations/2/observations/0/state", "\"clera\"")),
        ["a state that is a number"] = ("CON016 /examinations/2/observations/0/state", With("/examinations/2/observations/0/state", "7")),
        ["an answer as no object"] = ("INT003 /examinations/2/observations/0", r => r["examinations"]![2]!["observations"]![0] = 7),
        ["an adverse word and more"] = (
            "INT061 /examinations/1/observations/0/state",
            With("/examinations/1/observations/0/state", "\"Defect!\"")
        ),
        ["a conclusion misspelt"] = ("INT005 /examinations/2/conclusion", With("/examinations/2/conclusion", "\"fine\"")),
        ["a basis misspelt"] = ("INT005 /examinations/0/basis", With("/examinations/0/basis", "\"half-yearly\"")),
        ["a date of making that cannot be read"] = ("INT004 /items/2/manufactured", With("/items/2/manufactured", "\"3/4/2023\"")),
        ["a load that is no number"] = ("INT003 /items/0/safeWorkingLoad/value", With("/items/0/safeWorkingLoad/value", "\"a lot\"")),
        ["an employer that is no object"] = ("INT003 /visit/employer", With("/visit/employer", "\"Alderfen\"")),
        ["a visit without a day"] = ("PAR016 /visit/examinedOn", Without("/visit/examinedOn")),
        ["a visit of an unreadable day"] = ("INT004 /visit/examinedOn", With("/visit/examinedOn", "\"some day in May\"")),
        ["a day of danger that cannot be read"] = (
            "INT004 /examinations/0/defects/0/becomesDangerOn",
            With("/examinations/0/defects/0/becomesDangerOn", "\"autumn\"")
        ),
        ["a day of danger left out"] = (
            "PAR011 /examinations/0/defects/0/becomesDangerOn",
            Without("/examinations/0/defects/0/becomesDangerOn")
        ),
        ["an item misspelt at its examination"] = ("CON002 /examinations/3/item", With("/examinations/3/item", "\"HEL-11\"")),
        ["a criterion misspelt at its defect"] = (
            "CON019 /examinations/0/defects/0/criterion",
            With("/examinations/0/defects/0/criterion", "\"abrasoin\"")
        ),
        ["a part fitted to a misspelt item"] = ("CON002 /items/1/fittedTo", With("/items/1/fittedTo", "\"HAR-11\"")),
        ["a releasing person misspelt"] = ("CON003 /releases/0/by", With("/releases/0/by", "\"ex11\"")),
    };

    public static TheoryData<string> Slips => [.. OneCause.Keys];

    public static TheoryData<string> Cases => [.. RuleCases.All.Select(c => c.ToString())];

    [Theory]
    [MemberData(nameof(Slips))]
    public void Of_one_cause_one_finding_stands_by_itself(string name)
    {
        var (root, make) = OneCause[name];
        var record = GoodRecord.Json();
        make(record);

        var found = GoodRecord.Check(record);

        Assert.Equal([root], found.Where(f => f.FollowsFrom is null).Select(f => $"{f.Code} {f.Path}"), StringComparer.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_a_finding_follows_from_is_found_too_and_no_less_grave(string name)
    {
        var rule = RuleCases.All.Single(c => string.Equals(c.ToString(), name, StringComparison.Ordinal));
        var record = GoodRecord.Json();
        rule.Make(record);

        var found = GoodRecord.Check(record, rule.History, rule.Rules);

        Assert.All(found.Where(f => f.FollowsFrom is not null), f =>
        {
            var cause = Assert.Single(found, c => c == f.FollowsFrom);
            Assert.Null(cause.FollowsFrom);
            Assert.True(cause.Severity >= f.Severity, $"{f.Code} follows from {cause.Code}");
        });
        Assert.Contains(found, f => f.FollowsFrom is null);
    }

    [Fact]
    public void An_error_never_follows_from_a_warning()
    {
        var lost = Found("INT900", Severity.Warning, "/items/0/serial") with { LostAt = "/items/0/serial" };
        var error = Found("PAR900", Severity.Error, "/items/0/serial");
        var warning = Found("PAR901", Severity.Warning, "/items/0/serial");

        var tied = FindingCauses.Tie([lost, error, warning]);

        Assert.Equal([null, null, "INT900"], tied.Select(f => f.FollowsFrom?.Code));
    }

    [Fact]
    public void Of_a_chain_all_follow_from_its_beginning()
    {
        var root = Found("INT900", Severity.Error, "/visit/a") with { LostAt = "/visit/a" };
        var second = Found("PAR900", Severity.Error, "/visit/a");
        var third = Found("PAR901", Severity.Error, "/items/0/b") with { PossibleCause = new("/visit/a", "PAR900") };

        var tied = FindingCauses.Tie([third, second, root]);

        Assert.Equal(["INT900", "INT900", null], tied.Select(f => f.FollowsFrom?.Code));
    }

    [Fact]
    public void Two_that_explain_each_other_leave_one_to_stand()
    {
        var one = Found("INT900", Severity.Error, "/visit/a") with { LostAt = "/visit/a", PossibleCause = new("/visit/a", "PAR900") };
        var other = Found("PAR900", Severity.Error, "/visit/a") with { PossibleCause = new("/visit/a", "INT900") };

        var tied = FindingCauses.Tie([one, other]);

        Assert.Equal(["PAR900", null], tied.Select(f => f.FollowsFrom?.Code));
    }

    [Theory]
    [InlineData("/items/3", "/items/3/serial", true)]
    [InlineData("/items/3", "/items/3/safeWorkingLoad/value", true)]
    [InlineData("/items/3", "/items/4/serial", false)]
    [InlineData("/examinations/3", "/examinations/3/defects/0/danger", false)]
    [InlineData("/items/3/serial", "/items/3", false)]
    public void A_lost_value_explains_what_is_within_it_and_in_the_same_row(string lost, string place, bool follows)
    {
        var tied = FindingCauses.Tie([
            Found("INT900", Severity.Error, lost) with
            {
                LostAt = lost,
            },
            Found("PAR900", Severity.Error, place),
        ]);

        Assert.Equal(follows ? "INT900" : null, tied[1].FollowsFrom?.Code);
    }

    [Fact]
    public void Tied_again_they_are_tied_alike()
    {
        IReadOnlyList<Finding> found =
        [
            Found("INT900", Severity.Error, "/visit/a") with
            {
                LostAt = "/visit/a",
            },
            Found("PAR900", Severity.Error, "/visit/a"),
        ];
        var tied = FindingCauses.Tie(found);

        Assert.Equal(tied, FindingCauses.Tie(tied));
    }

    private static Finding Found(string code, Severity severity, string path) => new(code, severity, path, $"it is wrong", $"Type it.", "");
}
