using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Tests.Binding;

/// <summary>Every slip is reported with its place, and all slips at once.</summary>
public sealed class IntakeCasesTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, IntakeCases.All.Count)];

    [Fact]
    public void The_record_without_a_slip_reads_without_a_finding() => Assert.Empty(SmallRecord.Findings(SmallRecord.Text));

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_slip_gives_one_finding_at_its_place(int number)
    {
        var slip = IntakeCases.All[number];
        Assert.Equal([(slip.Code, slip.Pointer)], SmallRecord.Findings(SmallRecord.With(slip)));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Two_slips_in_one_record_give_two_findings(int number)
    {
        var first = IntakeCases.All[number];
        foreach (var second in IntakeCases.All.Where(s => Apart(s, first)))
        {
            Assert.Equal(
                new[] { (first.Code, first.Pointer), (second.Code, second.Pointer) }.Order(),
                SmallRecord.Findings(SmallRecord.With(first, second))
            );
        }
    }

    [Fact]
    public void A_slip_of_every_code_at_once_gives_a_finding_for_each()
    {
        var slips = IntakeCases.All.Aggregate(new List<IntakeCase>(), (chosen, slip) =>
        {
            if (chosen.TrueForAll(c => Apart(c, slip)))
                chosen.Add(slip);
            return chosen;
        });
        Assert.True(slips.Count >= 9, $"only {slips.Count} slips stand apart");
        Assert.Equal(slips.Select(s => (s.Code, s.Pointer)).Order(), SmallRecord.Findings(SmallRecord.With(slips)));
    }

    [Fact]
    public void Every_code_of_reading_has_a_case() => Assert.Empty(Untested(IntakeRules.All));

    [Fact]
    public void A_planted_code_without_a_case_is_named() =>
        Assert.Equal(
            "INT999",
            Assert.Single(Untested([.. IntakeRules.All, new RuleInfo("INT999", Severity.Note, "Planted", "Planted.", $"Planted.", "none")]))
        );

    [Theory]
    [InlineData("Har\\uD83Dness")]
    [InlineData("Harness\\uDE00")]
    [InlineData("\\\"Har\\u006eess\\\" \\t\\n\\r\\b\\f\\/\\\\ \\uD83D\\uD83D\\uDE00")]
    public void Half_of_a_character_pair_is_a_finding_at_its_place_and_the_rest_is_read(string typed)
    {
        var read = SmallRecord.Read(SmallRecord.Text.Replace("Harness", typed, StringComparison.Ordinal));
        Assert.Contains(read.Findings, f =>
            f.Path is "/items/0/description" && string.Equals(f.Code, IntakeRules.UnprintableText.Code, StringComparison.Ordinal)
        );
        Assert.Equal("A-1", read.Record!.Items[0].Id);
    }

    [Fact]
    public void Half_of_a_character_pair_in_a_name_makes_the_file_unreadable()
    {
        var read = SmallRecord.Read(SmallRecord.Text.Replace("\"model\"", "\"mod\\uD83Del\"", StringComparison.Ordinal));
        Assert.Null(read.Record);
        Assert.Equal("the file holds text that is not valid Unicode", read.Unreadable);
    }

    [Fact]
    public void An_answer_written_twice_counts_as_the_worse_in_either_order()
    {
        foreach (var typed in (string[])["\"state\": \"clear\", \"state\": \"doubt\"", "\"state\": \"doubt\", \"state\": \"clear\""])
        {
            var read = SmallRecord.Read(SmallRecord.Text.Replace("\"state\": \"clear\"", typed, StringComparison.Ordinal));
            Assert.Equal(ObservedState.Doubt, read.Record!.Examinations[0].Observations[0].State);
        }
    }

    [Fact]
    public void A_misspelt_answer_is_no_answer_and_the_hint_names_the_nearest()
    {
        var read = SmallRecord.Read(SmallRecord.Text.Replace("\"clear\"", "\"clera\"", StringComparison.Ordinal));
        var observation = read.Record!.Examinations[0].Observations[0];
        Assert.Null(observation.State);
        Assert.Equal("clera", observation.StateAsTyped);
        var hint = Assert.Single(read.Findings).Hint.Text;
        Assert.StartsWith("Did you mean 'clear'?", hint, StringComparison.Ordinal);
    }

    /// <summary>Neither slip alters what the other is made in, and they are found at different places.</summary>
    private static bool Apart(IntakeCase one, IntakeCase other)
    {
        var (a, b) = (
            SmallRecord.Text.IndexOf(one.Old, StringComparison.Ordinal),
            SmallRecord.Text.IndexOf(other.Old, StringComparison.Ordinal)
        );
        return a + one.Old.Length <= b || b + other.Old.Length <= a;
    }

    private static IEnumerable<string> Untested(IEnumerable<RuleInfo> rules) =>
        rules.Select(r => r.Code).Except(IntakeCases.All.Select(c => c.Code), StringComparer.Ordinal);
}
