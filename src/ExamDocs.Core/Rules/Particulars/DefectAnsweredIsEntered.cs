using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class DefectAnsweredIsEntered : RegimeRule
{
    public DefectAnsweredIsEntered()
        : base(
            new RuleInfo(
                "PAR032",
                Severity.Error,
                "Whatever is answered with defect is entered as a defect",
                "The report names the part, describes the defect, says whether it is a danger and what must be done; an "
                    + "answer alone says none of it.",
                $"Add the defect with its part, description, danger and remedy. The item is withdrawn in any case, with notice and label.",
                "SI 1998/2307 Schedule 1 para 8(a) to (c)"
            )
        ) =>
        Each(e =>
            e.Observations.Where(o =>
                    o.Observation is { State: ObservedState.Defect, Criterion: not null }
                    && !e.Examination.Defects.Any(d => string.Equals(d.Criterion, o.Observation.Criterion, StringComparison.Ordinal))
                )
                .Select(o => new Fault(
                    $"{o.Path[e.Path.Length..]}/state",
                    $"{o.Observation.Criterion} is answered with defect, and no defect is entered for it",
                    Cause: CauseOf(o.Observation.Criterion!, o.Criterion is not null, o.Path, e)
                ))
        );

    /// <summary>That the criterion is misspelt here, or at a defect that names none.</summary>
    private static PossibleCause? CauseOf(string criterion, bool isKnown, string path, ExaminationCase e)
    {
        if (!isKnown)
            return new PossibleCause($"{path}/criterion", "CON015");
        return EnteredAstray.Of(e, criterion) is { } astray ? new PossibleCause($"{astray}/criterion", "CON019") : null;
    }
}
