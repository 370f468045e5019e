using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class StateIsAllowed : Rule<ExaminationCase>
{
    public StateIsAllowed()
        : base(
            new RuleInfo(
                "CON016",
                Severity.Error,
                "Every answer is one that its criterion allows",
                "A question that must be answered cannot be called not applicable, and a hard reject criterion cannot be "
                    + "called normal wear.",
                $"Type an answer that the criterion allows; in doubt type doubt.",
                "criteria catalogue"
            )
        ) =>
        Each(e =>
            e.Observations.Where(o => IsRefused(o.Observation, o.Criterion))
                .Select(o => new Fault(
                    $"{o.Path[e.Path.Length..]}/state",
                    o.Observation.StateAsTyped is { } typed
                        ? (Message)$"'{typed}' is not an answer that {o.Observation.Criterion} allows"
                        : Unanswered(o.Observation.Criterion),
                    Hint(o.Observation, o.Criterion)
                ))
        );

    private static Message Unanswered(string? criterion) =>
        criterion is null ? (Message)$"an answer is missing" : $"{criterion} has no answer";

    private static Message Hint(Observation observation, Criteria.Criterion? criterion)
    {
        var allowed = Records
            .Words.States.All.Where(w => criterion is null || criterion.Allows(Records.Words.States.Find(w)!.Value))
            .ToList();
        var near = observation.StateAsTyped is { } typed ? SpellingSuggestion.Of(typed, allowed) : null;
        return near is null
            ? (Message)$"Allowed: {string.Join(", ", allowed)}."
            : $"Did you mean '{near}'? Allowed: {string.Join(", ", allowed)}.";
    }

    /// <summary>
    /// True also for a word that is no state: reading leaves it to this rule, which knows the words that the criterion allows.
    /// </summary>
    private static bool IsRefused(Observation observation, Criteria.Criterion? criterion) =>
        observation.State is not { } state || (criterion is not null && !criterion.Allows(state));
}
