using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class FittedPartIsPermitted : Rule<RowCase<Renewal>>
{
    public FittedPartIsPermitted()
        : base(
            new RuleInfo(
                "REN007",
                Severity.Error,
                "The part fitted is one that the maker permits",
                "A part that the maker has not tried on the item changes how the whole holds.",
                "Fit one of the parts permitted, and record that renewal; or correct the part number.",
                "the maker's instructions recorded in the limits of the item renewed"
            )
        ) =>
        Each(r =>
            r.FittedNow()
                .SelectMany(fitted =>
                    fitted
                        .Whole.Limits.All.Where(l => l.Permits(fitted.Part.Item.PartNumber) is false)
                        .Select(l => new Fault(
                            "/fittedPart",
                            $"{r.Row.FittedPart} with {Number(fitted.Part)} is not among the parts permitted on {r.Row.Item}: "
                                + $"{string.Join(", ", l.PermittedParts!)}{LimitsSourceText.Beside(l)}"
                        ))
                )
        );

    private static string Number(ItemCase part) => part.Item.PartNumber is { } number ? $"part number {number}" : "no part number";
}
