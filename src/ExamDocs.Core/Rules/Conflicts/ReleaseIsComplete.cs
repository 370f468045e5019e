using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ReleaseIsComplete : Rule<RowCase<Release>>
{
    public ReleaseIsComplete()
        : base(
            new RuleInfo(
                "CON014",
                Severity.Error,
                "A release says of what, by whom, when and on what grounds",
                "Somebody takes the item's return upon themselves: without name, day and grounds it is no release.",
                $"Type the item, the person's id, the date and the grounds.",
                "EN 365:2004 (from memory): confirmed in writing by a competent person"
            )
        )
    {
        Require(r => r.Row.Item, "/item", $"the release names no item");
        Require(r => r.Row.By, "/by", $"the release names nobody who gave it");
        Require(r => r.Row.Grounds, "/grounds", $"the release gives no grounds");
        Forbid(
            r => r.Row.Grounds is not null && !WithdrawalEnd.IsSentence(r.Row.Grounds),
            "/grounds",
            r => $"'{r.Row.Grounds}' is too short: give the grounds in a sentence that somebody else can follow"
        );
        Forbid(r => r.Row.On is null, "/on", _ => $"the release has no date");
    }
}
