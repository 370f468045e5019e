using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Templates.CheckSheet.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.CheckSheet;

/// <summary>One line of a check sheet: what is examined, the answers that may be ticked, and the answer of last time.</summary>
public sealed class SheetCriterion
{
    /// <summary>The places of the boxes from left to right: the good answer and the bad one far apart.</summary>
    public static IReadOnlyList<ObservedState> Places { get; } =
    [
        ObservedState.Clear,
        ObservedState.NoSign,
        ObservedState.NotApplicable,
        ObservedState.Noted,
        ObservedState.Doubt,
        ObservedState.Defect,
        ObservedState.NotExamined,
    ];

    /// <summary>
    /// Answers for a criterion of which nothing is known: noted, not applicable and nobody to ask are left out.
    /// </summary>
    private static readonly ObservedState[] OfFreeLine =
    [
        ObservedState.Clear,
        ObservedState.Doubt,
        ObservedState.Defect,
        ObservedState.NotExamined,
    ];

    private readonly Criterion? _criterion;

    private SheetCriterion(Criterion? criterion, string name, string? last) => (_criterion, Name, LastTime) = (criterion, name, last);

    /// <summary>Empty for a free line.</summary>
    public string Name { get; }

    public string Question => _criterion is { } criterion ? Phrases.Question(criterion) : "";

    public CriterionClass? Class => _criterion?.Class;

    public bool IsRequired => _criterion?.Required is true;

    /// <summary>By what means it is examined, in words.</summary>
    public string Means => _criterion is null ? "" : string.Join(", ", _criterion.Means.Select(CheckSheetPhrases.Current.Means));

    /// <summary>The answer of the last examination with its note; null where there was none.</summary>
    public string? LastTime { get; }

    /// <summary>Whether a box for this answer is on the line: only what the criterion allows.</summary>
    public bool Offers(ObservedState state) => _criterion?.Allows(state) ?? OfFreeLine.Contains(state);

    public static SheetCriterion Of(Criterion criterion, Examination? last) =>
        new(criterion, Printed.Criterion(criterion.Id), last is null ? null : Answers(criterion.AnswersIn(last)));

    /// <summary>An answer of last time to something that the catalogue does not ask.</summary>
    public static SheetCriterion Of(Observation answered) => new(null, Printed.Criterion(answered.Criterion), Answer(answered));

    /// <summary>A line on which the examiner writes what is examined.</summary>
    public static SheetCriterion Free() => new(null, "", null);

    private static string? Answers(IEnumerable<Observation> answers) =>
        string.Join("; ", answers.Select(Answer)) is { Length: > 0 } text ? text : null;

    private static string Answer(Observation answer) =>
        Printed.Join(
            " – ",
            answer.State is { } state ? Phrases.State(state) : CheckSheetPhrases.Current.AsTyped(answer.StateAsTyped),
            answer.Note
        );
}
