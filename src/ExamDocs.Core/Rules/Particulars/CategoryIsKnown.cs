using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class CategoryIsKnown : Rule<ItemCase>
{
    public CategoryIsKnown() : base(new RuleInfo("PAR028", Severity.Error, "The category is one of the catalogue's",
        "The category says what must be examined.",
        $"Type one of: {string.Join(", ", Catalogue.All.Select(c => c.Id))}.", "criteria catalogue")) =>
        Each(i => i.Item.Category is { } typed && i.Category is null
            ? [new Fault("/category", $"'{typed}' is not a category that is known", Hint(typed))] : []);

    private static string? Hint(string typed) =>
        NearMiss.Of(typed, Catalogue.All.Select(c => c.Id)) is { } near ? $"Did you mean '{near}'?" : null;
}
