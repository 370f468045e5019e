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
                "Measure at the positions of the first profile, and further places besides where you want them.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            e => MeasuredNow.Of(e) is { Profile.SinceFirst.UnmatchedMm.Count: > 0 },
            "/diameters",
            e => Words(MeasuredNow.Of(e)!.Profile.SinceFirst!)
        );

    private static string Words(ChangeSinceFirst change) =>
        $"the first profile recorded, {Say.Day(change.FirstOn)}, and this one do not share the positions "
        + $"{string.Join(", ", change.UnmatchedMm.Select(Say.Number))} mm";
}
