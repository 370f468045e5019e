using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class FittedPartSaysSo : Rule<RowCase<Renewal>>
{
    public FittedPartSaysSo()
        : base(
            new RuleInfo(
                "REN003",
                Severity.Error,
                "The part fitted is recorded as fitted to the item renewed",
                "A bridge that the renewal puts on one harness and its own row on another is on neither for certain.",
                "Type the renewed item's id as fittedTo of the part fitted.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            r =>
                r.Row.Item is not null
                && r.Context.ItemsWithId(r.Row.FittedPart)
                    .Any(p =>
                        !string.Equals(p.Item.FittedTo, r.Row.Item, StringComparison.Ordinal)
                        && !Assembly.IsRemoved(r.Context, r.Row.FittedPart!, r.Row.Item)
                    ),
            "/fittedPart",
            r => $"{r.Row.FittedPart} was fitted to {r.Row.Item}, and its own row does not say so"
        );
}
