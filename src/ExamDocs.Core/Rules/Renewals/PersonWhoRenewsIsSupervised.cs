using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class PersonWhoRenewsIsSupervised : Rule<RowCase<Renewal>>
{
    public PersonWhoRenewsIsSupervised()
        : base(
            new RuleInfo(
                "REN004",
                Severity.Error,
                "A renewal is done under a named competent person",
                "Whoever fits the part, someone competent must have looked over it and must be named.",
                $"Type the id of the person who supervised; one's own where a competent person did the work.",
                "common practice, no source"
            )
        ) => Require(r => r.Row.SupervisedBy, "/supervisedBy", $"the renewal names nobody who supervised it");
}
