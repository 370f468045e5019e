using ExamDocs.Core.Records;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>Every rule finds its own slip at its place, and finds nothing in a good record.</summary>
public sealed class RuleCasesTests
{
    public static TheoryData<string> Names => [.. RuleCases.All.Select(c => c.ToString())];

    [Fact]
    public void No_rule_finds_a_fault_in_the_good_record() => Assert.Empty(GoodRecord.Check(GoodRecord.Json()));

    [Theory]
    [MemberData(nameof(Names))]
    public void Only_its_own_rule_finds_a_slip_and_names_its_place(string name)
    {
        var rule = RuleCases.All.Single(c => string.Equals(c.ToString(), name, StringComparison.Ordinal));
        var record = GoodRecord.Json();
        rule.Make(record);
        var found = GoodRecord.Check(record, rule.History, rule.Rules);
        Assert.Equal(
            rule.Pointers.Order(StringComparer.Ordinal),
            found.Where(f => string.Equals(f.Code, rule.Code, StringComparison.Ordinal)).Select(f => f.Path).Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            (rule.Besides?.Split(' ') ?? []).Append(rule.Code).Order(StringComparer.Ordinal),
            found.Select(f => f.Code).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
        );
    }
}
