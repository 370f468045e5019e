using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Each criterion of each category, alone, in each state; the outcome expected follows from the catalogue's flags.</summary>
public sealed class CriterionStateTests
{
    private static readonly string[] States = ["clear", "noted", "doubt", "defect", "no-sign", "not-examined", "not-applicable"];

    /// <summary>Words that look like a state but are not one.</summary>
    private static readonly string[] Misspelt = ["clera", "Clear"];

    public static TheoryData<string> Categories => [.. Catalogue.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Categories))]
    public void Each_state_alone_gives_what_the_catalogue_says(string category)
    {
        var wrong = new List<string>();
        foreach (var criterion in Catalogue.Find(category)!.Criteria)
        {
            foreach (var state in States)
            {
                var decided = Decided.From(GoodRecord.For(category).Answer(criterion.Id, state));
                var (outcome, code) = Expected(criterion, state);
                Check(wrong, decided, $"{criterion.Id} {state}", outcome, code);
            }
        }
        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void A_word_that_is_no_state_is_never_an_answer(string category)
    {
        var wrong = new List<string>();
        foreach (var criterion in Catalogue.Find(category)!.Criteria)
        {
            foreach (var word in Misspelt)
            {
                var decided = Decided.From(GoodRecord.For(category).Answer(criterion.Id, word));
                Check(wrong, decided, $"{criterion.Id} {word}", "undetermined", "U2");
            }
        }
        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void A_required_criterion_without_an_answer_is_undetermined(string category)
    {
        var wrong = new List<string>();
        foreach (var criterion in Catalogue.Find(category)!.Criteria)
        {
            var (outcome, code) = criterion.Required ? ("undetermined", "U1") : ("fit", null);
            var record = GoodRecord.For(category);
            record.Observations().Remove(record.Observation(criterion.Id));
            Check(wrong, Decided.From(record), $"{criterion.Id} missing", outcome, code);
            if (!criterion.Required)
                continue;
            record = GoodRecord.For(category).Answer(criterion.Id, "");
            Check(wrong, Decided.From(record), $"{criterion.Id} empty", outcome, code);
            record = GoodRecord.For(category);
            record.Observation(criterion.Id).Remove("state");
            Check(wrong, Decided.From(record), $"{criterion.Id} without state", outcome, code);
        }
        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void A_misspelt_criterion_answers_nothing_and_hides_nothing(string category)
    {
        var wrong = new List<string>();
        foreach (var criterion in Catalogue.Find(category)!.Criteria)
        {
            foreach (var state in new[] { "clear", "doubt" })
            {
                var record = GoodRecord.For(category).Answer(criterion.Id, state);
                record.Observation(criterion.Id)["criterion"] = criterion.Id + "x";
                var decided = Decided.From(record);
                var atBest = state is "doubt" ? 3 : 2;
                if (decided.Rank() < atBest)
                    wrong.Add($"{criterion.Id}x {state}: {decided.Line()}");
            }
        }
        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void A_dated_defect_ends_service_where_decisive_and_dates_it_elsewhere(string category)
    {
        var wrong = new List<string>();
        foreach (var criterion in Catalogue.Find(category)!.Criteria)
        {
            var record = GoodRecord.For(category).Answer(criterion.Id, "defect").Later(criterion.Id, "2026-08-01");
            var (outcome, code) = criterion.Class == CriterionClass.Decisive ? ("withdraw", "W1") : ("fit-until", "D1");
            Check(wrong, Decided.From(record), $"{criterion.Id} dated defect", outcome, code);
        }
        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void Of_two_answers_the_worse_holds_whichever_comes_first(string category)
    {
        var wrong = new List<string>();
        foreach (var criterion in Catalogue.Find(category)!.Criteria)
        {
            foreach (var (state, outcome) in new[] { ("clear", "undetermined"), ("doubt", "withdraw") })
            {
                foreach (var first in new[] { true, false })
                {
                    var record = GoodRecord.For(category);
                    var second = new JsonObject
                    {
                        ["criterion"] = criterion.Id,
                        ["state"] = state,
                        ["note"] = "seen",
                    };
                    record.Observations().Insert(first ? 0 : record.Observations().Count, second);
                    Check(wrong, Decided.From(record), $"{criterion.Id} clear and {state}, first {first}", outcome, null);
                }
            }
        }
        Assert.Empty(wrong);
    }

    private static (string Outcome, string? Code) Expected(Criterion criterion, string state) =>
        state switch
        {
            "clear" => ("fit", null),
            "noted" => criterion.AllowsNoted ? ("fit", null) : ("undetermined", "U2"),
            "no-sign" => criterion.AllowsNoSign ? ("fit", null) : ("undetermined", "U2"),
            "not-applicable" => criterion.AllowsNotApplicable ? ("fit", null) : ("undetermined", "U2"),
            "not-examined" => criterion.Required ? ("undetermined", "U1") : ("fit", null),
            "doubt" => ("withdraw", "W2"),
            _ => ("withdraw", criterion.Class == CriterionClass.Decisive ? "W1" : "W3"),
        };

    private static void Check(List<string> wrong, Decided decided, string what, string outcome, string? code)
    {
        var codes = decided.Codes().Split(' ');
        if (!string.Equals(decided.Outcome(), outcome, StringComparison.Ordinal) || (code is not null && !codes.Contains(code)))
            wrong.Add($"{what}: {decided.Line()} where {outcome} {code} is expected");
    }
}
