using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class RenewalIsComplete : Rule<RowCase<Renewal>>
{
    public RenewalIsComplete()
        : base(
            new RuleInfo(
                "REN001",
                Severity.Error,
                "A renewal says what was renewed, by whom and when",
                "A new part changes the assembly: the record of who fitted what is all that anyone has afterwards.",
                $"Type the item, the part removed or fitted, who did it, and the day.",
                "common practice, no source"
            )
        )
    {
        Require(r => r.Row.Item, "/item", $"the renewal names no item");
        Require(r => r.Row.DoneBy, "/doneBy", $"the renewal names nobody who did it");
        Forbid(r => r.Row.DoneOn is null, "/doneOn", _ => $"the renewal has no date");
        Forbid(
            r => r.Row is { RemovedPart: null, FittedPart: null },
            "",
            _ => $"the renewal names neither a part removed nor a part fitted"
        );
        Forbid(
            r => r.Row.FittedPart is not null && string.Equals(r.Row.FittedPart, r.Row.RemovedPart, StringComparison.Ordinal),
            "/fittedPart",
            _ => $"the part removed and the part fitted are the same"
        );
    }
}
