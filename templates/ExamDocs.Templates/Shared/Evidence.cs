using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Wording;

namespace ExamDocs.Templates.Shared;

/// <summary>One observation that has something to say.</summary>
public sealed record EvidenceLine(string Criterion, string Class, string State, bool Adverse, string Note);

/// <summary>The observations of an examination, sorted for the reader: decisive first, the telling ones written out.</summary>
public sealed class Evidence
{
    public Evidence(DeterminedItem item)
    {
        var ordered = Ordered(item);
        Telling = [.. ordered.Where(o => !IsQuiet(o)).Select(o => Line(o, item.Category))];
        Clear = Names(ordered, ObservedState.Clear);
        NoSign = Names(ordered, ObservedState.NoSign);
        NotApplicable = Names(ordered, ObservedState.NotApplicable);
        var answered = ordered.Select(o => o.Criterion).ToHashSet(StringComparer.Ordinal);
        Unanswered = [.. (item.Category?.Criteria ?? [])
            .Where(c => c.Required && !answered.Contains(c.Id)).Select(c => Printed.Criterion(c.Id))];
    }

    /// <summary>Defects, doubts, things noted, not examined or not understood, with their notes.</summary>
    public IReadOnlyList<EvidenceLine> Telling { get; }

    public IReadOnlyList<string> Clear { get; }

    public IReadOnlyList<string> NoSign { get; }

    public IReadOnlyList<string> NotApplicable { get; }

    /// <summary>Required criteria without any observation.</summary>
    public IReadOnlyList<string> Unanswered { get; }

    public bool IsEmpty => Telling.Count + Clear.Count + NoSign.Count + NotApplicable.Count == 0;

    // A quiet answer with a note is not quiet: what the examiner wrote is printed.
    private static bool IsQuiet(Observation o) => string.IsNullOrWhiteSpace(o.Note) && o.Photo is null
        && o.State is ObservedState.Clear or ObservedState.NoSign or ObservedState.NotApplicable;

    private static IReadOnlyList<string> Names(IEnumerable<Observation> ordered, ObservedState state) =>
        [.. ordered.Where(o => o.State == state && IsQuiet(o)).Select(o => Printed.Criterion(o.Criterion))];

    private static EvidenceLine Line(Observation o, Category? category) => new(
        Printed.Criterion(o.Criterion),
        English.Class(category?.Find(o.Criterion)?.Class),
        o.State is { } state ? English.State(state) : Printed.Text(o.StateAsTyped),
        o.State is ObservedState.Defect or ObservedState.Doubt or ObservedState.NotExamined or null,
        NoteOf(o));

    private static string NoteOf(Observation o)
    {
        var text = Printed.Join(" ", o.Note, o.Photo is null ? null : $"({English.Report.Photo} {o.Photo})");
        return text.Length == 0 ? English.NotRecorded : text;
    }

    private static List<Observation> Ordered(DeterminedItem item)
    {
        var criteria = item.Category?.Criteria ?? [];
        var rank = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < criteria.Count; i++)
            rank[criteria[i].Id] = ((int)criteria[i].Class * 1000) + i;
        return [.. (item.Examination?.Observations ?? [])
            .OrderBy(o => o.Criterion is not null && rank.TryGetValue(o.Criterion, out var at) ? at : int.MaxValue)];
    }
}
