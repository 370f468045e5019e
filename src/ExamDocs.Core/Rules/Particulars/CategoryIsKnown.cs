using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class CategoryIsKnown : Rule<ItemCase>
{
    public CategoryIsKnown()
        : base(
            new RuleInfo(
                "PAR028",
                Severity.Error,
                "The category is one of the catalogue's",
                "The category says what must be examined.",
                Hint(KnownRules.BuiltIn),
                "criteria catalogue"
            )
        ) =>
        Each(i =>
            i.Item.Category is { } typed && i.Category is null
                ? [new Fault("/category", $"'{typed}' is not a known category", Near(typed, i.Context.Rules) ?? Hint(i.Context.Rules))]
                : []
        );

    /// <summary>The ids of all categories, including those that the user added.</summary>
    internal static Message Hint(KnownRules rules) => $"Type one of: {string.Join(", ", rules.Categories.Select(c => c.Id))}.";

    private static Message? Near(string typed, KnownRules rules) =>
        SpellingSuggestion.Of(typed, rules.Categories.Select(c => c.Id)) is { } near ? (Message)$"Did you mean '{near}'?" : null;
}
