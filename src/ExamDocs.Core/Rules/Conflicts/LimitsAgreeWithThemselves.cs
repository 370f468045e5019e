using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class LimitsAgreeWithThemselves : Rule<RowCase<MakersLimits>>
{
    public LimitsAgreeWithThemselves()
        : base(
            new RuleInfo(
                "CON010",
                Severity.Error,
                "Maker's limits do not contradict themselves",
                "A maker cannot set a time limit and say that there is none.",
                $"Take out noLimit, or the duration.",
                "record format examdocs/1"
            )
        ) =>
        Forbid(
            l =>
                l.Row
                    is { NoLimit: true }
                        and (
                            { MaxUseYears: not null }
                            or { MaxAgeYears: not null }
                            or { MaxStorageYears: not null }
                            or { Unobtainable: not null }
                        ),
            "/noLimit",
            _ => $"the limits state that there is no time limit, and give one too"
        );
}
