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
                "Nothing needs to be done where that is meant; else record the item again.",
                "common practice, no source"
            )
        ) => Each(v => v.Context.History.LeftOut.Count == 0 ? [] : [new Fault("/reference", Words(v.Context.History.LeftOut))]);

    private static string Words(IReadOnlyList<string> ids)
    {
        var more = ids.Count > Named ? FormattableString.Invariant($" and {ids.Count - Named} more") : "";
        return $"an earlier version of this visit also has {string.Join(", ", ids.Take(Named))}{more}; these stand as they were";
    }
}
