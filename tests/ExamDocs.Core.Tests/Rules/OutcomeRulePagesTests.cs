using ExamDocs.Core.Determination;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>The page of the outcome rules has title, why and source of each rule exactly as the code has them.</summary>
public sealed class OutcomeRulePagesTests
{
    public static TheoryData<string> Codes =>
        [
            .. Enumerable.Range(1, 11).Select(n => $"W{n}"),
            .. Enumerable.Range(0, 7).Select(n => $"U{n}"),
            .. Enumerable.Range(1, 3).Select(n => $"D{n}"),
        ];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_page_has_the_words_of_the_rule(string code)
    {
        var rule = Assert.Single(OutcomeRules.All, r => r.Code == code);
        var page = File.ReadAllLines(Path.Combine(RepositoryRoot.Path, "docs", "rules", "outcomes.md"));
        var at = Array.IndexOf(page, $"<a id=\"{code.ToLowerInvariant()}\"></a>");
        Assert.True(at > 0, $"{code} has no place on the page");
        Assert.Equal(
            [$"## {code}: {rule.Title}", $"**Why.** {rule.Why}", $"**Source.** {rule.Source}"],
            [page[at + 2], page[at + 6], page[at + 8]]
        );
        Assert.All([rule.Title, rule.Why, rule.Source], text => Assert.True(text.Length > 10, text));
    }

    [Fact]
    public void These_are_all_the_rules() => Assert.Equal(Codes.Count, OutcomeRules.All.Count);
}
