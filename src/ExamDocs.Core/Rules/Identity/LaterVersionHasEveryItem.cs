using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Identity;

public sealed class LaterVersionHasEveryItem : Rule<VisitCase>
{
    private const int Named = 20;

    public LaterVersionHasEveryItem()
        : base(
            new RuleInfo(
                "IDN015",
                Severity.Warning,
                "A corrected record still has every item of the earlier version",
                "What a correction leaves out keeps the outcome and the documents that it has.",
                $"Nothing needs to be done where that is meant; else record the item again.",
                "common practice, no source"
            )
        ) => Each(v => v.Context.History.LeftOut.Count == 0 ? [] : [new Fault("/reference", Words(v.Context.History.LeftOut))]);

    private static Message Words(IReadOnlyList<string> ids)
    {
        var named = string.Join(", ", ids.Take(Named));
        return ids.Count > Named
            ? (Message)
                $"an earlier version of this visit also has {named} and {ids.Count - Named} more; they keep their outcomes and documents"
            : $"an earlier version of this visit also has {named}; these items keep their outcomes and documents";
    }
}
