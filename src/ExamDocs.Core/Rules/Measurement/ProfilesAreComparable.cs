using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Measurement;

public sealed class ProfilesAreComparable : ExaminationRule
{
    public ProfilesAreComparable()
        : base(
            new RuleInfo(
                "MEA008",
                Severity.Note,
                "The places measured are those of the first profile recorded",
                "Only a place measured both times tells how far it has worn.",
                $"Measure at the positions of the first profile, and further places besides where you want them.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            e => MeasuredNow.Of(e) is { Profile.SinceFirst.UnmatchedMm.Count: > 0 },
            "/diameters",
            e => Words(MeasuredNow.Of(e)!.Profile.SinceFirst!)
        );

    private static Message Words(ChangeSinceFirst change) =>
        $"these positions are in this profile or in the first one recorded, of {change.FirstOn}, but not in both: "
        + $"{Message.Join(", ", change.UnmatchedMm.Select(mm => (Message)$"{mm}"))} mm";
}
