using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class PartIsOnOneItem : Rule<ItemCase>
{
    public PartIsOnOneItem()
        : base(
            new RuleInfo(
                "CON004",
                Severity.Error,
                "A part is fitted to one item only",
                "A part that is said to be on two items is missing from one of them.",
                $"Correct fittedTo, or the renewal that says otherwise.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => i.Wholes.Select(w => w.Item.Id).Distinct(StringComparer.Ordinal).Count() > 1,
            "/fittedTo",
            i => $"it is fitted to several items at once: {string.Join(", ", i.Wholes.Select(w => w.Item.Id))}"
        );
}
