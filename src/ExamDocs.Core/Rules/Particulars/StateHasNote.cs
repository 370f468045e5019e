using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class StateHasNote : Rule<Cases.ExaminationCase>
{
    public StateHasNote()
        : base(
            new RuleInfo(
                "PAR021",
                Severity.Error,
                "Whatever was noted, doubted or found defective has a note",
                "A doubt nobody describes cannot be resolved, nor a wear mark compared next time.",
                $"Say in a few words what was seen or felt, and where on the item.",
                "common practice, no source"
            )
        ) =>
        Each(e =>
            e.Examination.Observations.Select(
                    (o, i) =>
                        o.State is ObservedState.Noted or ObservedState.Doubt or ObservedState.Defect && o.Note is null
                            ? new Fault(
                                $"/observations/{Index.Of(i)}/note",
                                o.Criterion is null
                                    ? (Message)$"the answer '{o.StateAsTyped}' has no note"
                                    : $"'{o.StateAsTyped}' against {o.Criterion} has no note",
                                Cause: new PossibleCause($"{e.Path}/observations/{Index.Of(i)}/state")
                            )
                            : null
                )
                .OfType<Fault>()
        );
}
