using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Undetermined;

/// <summary>U4. A limit that cannot be counted may have passed already: it is never left out as if there were none.</summary>
internal sealed class LimitCannotBeCounted : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "U4",
            "A limit of the maker is recorded and cannot be counted",
            "Kit of unknown age may be past its limit already.",
            "the maker's instructions recorded in the limits"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) => item.Life.Uncountable.Select(why => Info.Because(why));
}
