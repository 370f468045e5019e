using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class PurposeIsStated : RegimeRule
{
    public PurposeIsStated()
        : base(
            new RuleInfo(
                "PAR022",
                Severity.Warning,
                "The purpose of the item is stated",
                "What it lifts sets how often it must be examined; without it the shorter interval is taken.",
                $"Type lifts-persons, accessory, other or fall-arrest-only.",
                "SI 1998/2307 reg 9(3)(a)(i) and (ii)"
            )
        ) =>
        Forbid(
            e => e.Item is { Item.Purpose: null },
            "/purpose",
            _ => $"the purpose of the item is not stated; the 6-month interval applies"
        );

    /// <summary>The place of the item, because the value is typed there.</summary>
    protected override string PathOf(Cases.ExaminationCase subject) => subject.Item?.Path ?? subject.Path;
}
