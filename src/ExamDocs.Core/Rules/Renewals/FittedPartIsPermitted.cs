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
                $"Fit one of the parts permitted, and record that renewal; or correct the part number.",
                "the maker's instructions recorded in the limits of the item renewed"
            )
        ) =>
        Each(r =>
            r.FittedNow()
                .SelectMany(fitted =>
                    fitted
                        .Whole.Limits.All.Where(l => l.Permits(fitted.Part.Item.PartNumber) is false)
                        .Select(l => new Fault("/fittedPart", Words(r.Row, fitted.Part.Item.PartNumber, l)))
                )
        );

    private static Message Words(Renewal renewal, string? number, MakersLimits limits) =>
        number is null
            ? (Message)$"{renewal.FittedPart} has no part number, and the parts permitted on {renewal.Item} are {Permitted(limits)}"
            : $"{renewal.FittedPart} with part number {number} is not one of the parts permitted on {renewal.Item}: {Permitted(limits)}";

    private static Message Permitted(MakersLimits limits) => $"{string.Join(", ", limits.PermittedParts!)} ({Spoken.Document(limits)})";
}
