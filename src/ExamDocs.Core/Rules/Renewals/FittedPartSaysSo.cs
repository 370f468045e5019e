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
                $"Type the renewed item's id as fittedTo of the part fitted.",
                "common practice, no source"
            )
        ) =>
        Each(r =>
            r.Row.Item is { } whole
            && r
                .Context.ItemsWithId(r.Row.FittedPart)
                .FirstOrDefault(p =>
                    !string.Equals(p.Item.FittedTo, whole, StringComparison.Ordinal)
                    && !Assembly.IsRemoved(r.Context, r.Row.FittedPart!, whole)
                )
                is { } part
                ?
                [
                    new Fault(
                        "/fittedPart",
                        $"{r.Row.FittedPart} was fitted to {whole}, but its own row does not say so",
                        Cause: CauseOf(r, part)
                    ),
                ]
                : []
        );

    /// <summary>That one of the two names the whole by an id that no item has.</summary>
    private static PossibleCause CauseOf(RowCase<Renewal> renewal, ItemCase part) =>
        new(renewal.Context.KnowsItem(renewal.Row.Item) ? $"{part.Path}/fittedTo" : $"{renewal.Path}/item", "CON002");
}
