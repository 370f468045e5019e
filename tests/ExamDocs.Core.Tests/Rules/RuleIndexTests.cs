using System.Reflection;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Rules;
using ExamDocs.Intake;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>No rule is missing from its index or from the table of cases, and no code is used twice.</summary>
public sealed class RuleIndexTests
{
    private static readonly Type[] CoreTypes = typeof(RuleBook).Assembly.GetTypes();

    private static readonly IReadOnlyList<object> IndexedOutcomeRules =
    [
        .. OutcomeRules.OfExamination,
        .. OutcomeRules.Withdrawing,
        .. OutcomeRules.Undetermining,
        .. OutcomeRules.Limiting,
    ];

    /// <summary>The rules of reading, in whatever class of that project they are kept.</summary>
    private static readonly IReadOnlyList<RuleInfo> IntakeTexts = [.. TextsIn(typeof(IntakeRules).Assembly.GetTypes())];

    private static IEnumerable<string> BookCodes => RuleBook.All.Select(r => r.Info.Code);

    [Fact]
    public void Every_rule_type_has_its_line_in_the_rule_book() =>
        Assert.Empty(RuleIndex.Forgotten(CoreTypes, typeof(IRule), RuleBook.All));

    [Fact]
    public void Every_outcome_rule_type_has_its_line_in_the_outcome_rules()
    {
        Assert.Empty(RuleIndex.Forgotten(CoreTypes, typeof(IOutcomeRule), IndexedOutcomeRules));
        Assert.Equal(OutcomeRules.All.Count, IndexedOutcomeRules.Count);
    }

    [Fact]
    public void Every_rule_of_reading_is_in_a_list()
    {
        var listed = ListsIn(typeof(IntakeRules).Assembly.GetTypes()).SelectMany(l => l).ToList();
        Assert.Empty(IntakeTexts.Except(listed).Select(i => i.Code));
        Assert.Empty(IntakeRules.All.Except(listed));
    }

    [Fact]
    public void No_code_is_used_twice_and_each_has_the_right_form()
    {
        var codes = BookCodes.Concat(OutcomeRules.All.Select(r => r.Code)).Concat(IntakeTexts.Select(i => i.Code)).ToList();
        Assert.True(codes.Count > 100, $"only {codes.Count} codes were looked at");
        Assert.Empty(RuleIndex.Shared(codes));
        Assert.Empty(RuleIndex.Misshapen(codes));
    }

    [Fact]
    public void Every_code_of_the_rule_book_has_a_case_and_every_case_a_code()
    {
        Assert.Empty(RuleIndex.Untested(BookCodes, RuleCases.All));
        Assert.Empty(RuleCases.All.Select(c => c.Code).Except(BookCodes, StringComparer.Ordinal));
        Assert.Empty(RuleIndex.Shared(RuleCases.All.Select(c => c.ToString())));
    }

    [Fact]
    public void Every_rule_gives_a_why_a_hint_and_a_source() => Assert.All(RuleBook.All.Select(r => r.Info).Concat(IntakeTexts), i =>
        {
            Assert.All([i.Title, i.Why, i.Hint.Text, i.Source], text => Assert.False(string.IsNullOrWhiteSpace(text), i.Code));
            Assert.Matches(@"^[A-Z].*[^.]$", i.Title);
            Assert.EndsWith(".", i.Why, StringComparison.Ordinal);
            Assert.EndsWith(".", i.Hint.Text, StringComparison.Ordinal);
        });

    [Fact]
    public void A_planted_rule_without_an_index_line_is_named()
    {
        Type[] types = [.. CoreTypes, typeof(PlantedRule), typeof(PlantedOutcomeRule)];
        Assert.Equal([nameof(PlantedRule)], RuleIndex.Forgotten(types, typeof(IRule), RuleBook.All));
        Assert.Equal([nameof(PlantedOutcomeRule)], RuleIndex.Forgotten(types, typeof(IOutcomeRule), IndexedOutcomeRules));
    }

    [Fact]
    public void A_planted_rule_of_reading_without_a_list_is_found() =>
        Assert.Equal(
            PlantedTexts.Forgotten,
            Assert.Single(TextsIn([typeof(PlantedTexts)]).Except(ListsIn([typeof(PlantedTexts)]).SelectMany(l => l)))
        );

    [Fact]
    public void A_planted_second_use_of_a_code_is_named() => Assert.Equal(["PAR005"], RuleIndex.Shared([.. BookCodes, "PAR005"]));

    [Theory]
    [InlineData("PAR05")]
    [InlineData("par005")]
    [InlineData("XYZ001")]
    [InlineData("W12")]
    [InlineData("U7")]
    [InlineData("D0")]
    public void A_planted_code_of_another_form_is_named(string code) => Assert.Equal([code], RuleIndex.Misshapen([.. BookCodes, code]));

    [Fact]
    public void A_planted_code_without_a_case_is_named() =>
        Assert.Equal(["PAR999"], RuleIndex.Untested([.. BookCodes, "PAR999"], RuleCases.All));

    private static IEnumerable<RuleInfo> TextsIn(IEnumerable<Type> types) => StaticsOf<RuleInfo>(types);

    private static IEnumerable<IReadOnlyList<RuleInfo>> ListsIn(IEnumerable<Type> types) => StaticsOf<IReadOnlyList<RuleInfo>>(types);

    /// <summary>Values of all static fields of the type, including those behind properties.</summary>
    private static IEnumerable<T> StaticsOf<T>(IEnumerable<Type> types) =>
        types
            .Where(t => !t.ContainsGenericParameters)
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(f => f.FieldType == typeof(T))
            .Select(f => (T)f.GetValue(null)!);

    private sealed class PlantedRule() : Rule<VisitCase>(new RuleInfo("PAR999", Severity.Note, "Planted", "Planted.", $"Planted.", "none"));

    private sealed class PlantedOutcomeRule : IOutcomeRule
    {
        public OutcomeRuleInfo Info { get; } = new("W9", "Planted", "Planted.", "none");
    }

    private static class PlantedTexts
    {
        public static readonly RuleInfo Listed = new("INT998", Severity.Note, "Planted", "Planted.", $"Planted.", "none");

        public static readonly RuleInfo Forgotten = new("INT999", Severity.Note, "Planted", "Planted.", $"Planted.", "none");

        public static IReadOnlyList<RuleInfo> All { get; } = [Listed];
    }
}
