using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Identity;

public sealed class EarlierIdIsKnown : Rule<ItemCase>
{
    public EarlierIdIsKnown()
        : base(
            new RuleInfo(
                "IDN014",
                Severity.Warning,
                "An earlier id that is named is one that was recorded",
                "A misspelt earlier id connects the item with nothing.",
                $"Type the id as the earlier record has it; or import that record first.",
                "common practice, no source"
            )
        ) =>
        Each(i =>
            i.Context.History.AnswerFaults.Where(f =>
                    f.Fault is AnswerFaultKind.Unknown
                    && i.ItemId is not null
                    && string.Equals(f.ItemId, i.ItemId, StringComparison.Ordinal)
                )
                .Select(f => new Fault(f.Path, $"no earlier record has an item with this id"))
        );
}
