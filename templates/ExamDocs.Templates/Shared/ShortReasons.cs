using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Shared;

/// <summary>Why an item is not to be used, as short as a label: what was found, then what else speaks against it.</summary>
public static class ShortReasons
{
    // The words of a defect or doubt say more than these reasons do; the conclusion says nothing that other reasons do not.
    private static readonly string[] OfObservations = ["W1", "W2", "W3"];
    private static readonly string[] OfDefects = ["W4"];
    private static readonly string[] OfConclusion = ["W6"];

    /// <summary>At least one reason, the weightiest first. A code that nothing else explains always has its reason here.</summary>
    public static IReadOnlyList<string> Of(DeterminedItem item)
    {
        string[] found =
            Has(item, OfObservations) ? [.. Found(item)]
            : item.Outcome is Outcome.Undetermined ? [.. NotExamined(item)]
            : [];
        string[] others =
        [
            .. Weighing(item).Where(r => !IsSaid(r, found.Length > 0, item)).Select(r => Printed.Sentence(Phrases.Say(r.Said))),
        ];
        string[] all = [.. found.Concat(others).Distinct(StringComparer.Ordinal)];
        return all.Length > 0
            ? all
            : [.. item.Reasons.Select(r => Printed.Sentence(Phrases.Say(r.Said))).DefaultIfEmpty(Phrases.Common.NotRecorded)];
    }

    private static IEnumerable<string> Found(DeterminedItem item) =>
        from observation in item.Examination?.Observations ?? []
        where
            observation.State is ObservedState.Doubt
            || (observation.State is ObservedState.Defect && (IsDecisive(item, observation) || Has(item, ["W3"])))
        select Printed.Of(
            Printed.Criterion(observation.Criterion),
            Printed.Text(observation.Note ?? Phrases.State(observation.State ?? ObservedState.Defect))
        );

    /// <summary>Why criteria were left unexamined, in the words of whoever left them.</summary>
    public static IEnumerable<string> NotExamined(DeterminedItem item) =>
        from observation in item.Examination?.Observations ?? []
        where observation is { State: ObservedState.NotExamined, Note: not null }
        select Printed.Of(Printed.Criterion(observation.Criterion), Printed.Text(observation.Note));

    private static bool IsSaid(Reason reason, bool found, DeterminedItem item) =>
        (found && OfObservations.Concat(OfDefects).Contains(reason.Code, StringComparer.Ordinal))
        || (
            OfConclusion.Contains(reason.Code, StringComparer.Ordinal)
            && Weighing(item).Any(r => !OfConclusion.Contains(r.Code, StringComparer.Ordinal))
        );

    // A gap in the record is not why a withdrawn item is not to be used, and would crowd out the reason that is.
    private static IReadOnlyList<Reason> Weighing(DeterminedItem item) =>
        item.Outcome is Outcome.Withdraw ? [.. item.Reasons.Where(r => r.Code.StartsWith('W'))] : item.Reasons;

    private static bool Has(DeterminedItem item, string[] codes) => item.Reasons.Any(r => codes.Contains(r.Code, StringComparer.Ordinal));

    private static bool IsDecisive(DeterminedItem item, Observation observation) =>
        item.Category?.Find(observation.Criterion)?.Class is CriterionClass.Decisive;
}
