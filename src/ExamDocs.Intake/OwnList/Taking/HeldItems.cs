using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Words;
using NodaTime;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>
/// Puts what a list has as out of use into the record as an earlier examination that withdrew it, in which nothing was examined
/// by whoever reads this: it stays withdrawn until a competent person releases it.
/// </summary>
internal sealed class HeldItems(KnownRules rules, string fileName, LocalDate asOf)
{
    private const string Identity = "identity";

    private const int LongestNote = 1_000;

    private readonly Dictionary<(string Item, LocalDate Day), Examination> _examinations = [];

    private readonly SortedDictionary<string, List<string>> _byReason = new(StringComparer.Ordinal);

    private readonly SortedDictionary<string, List<string>> _lost = new(StringComparer.Ordinal);

    public IReadOnlyList<Examination> Examinations => [.. _examinations.Values];

    /// <summary>Ids by why they are held, in the list's words.</summary>
    public IReadOnlyDictionary<string, List<string>> ByReason => _byReason;

    /// <summary>Ids of what is lost and not withdrawn besides, by the list's words.</summary>
    public IReadOnlyDictionary<string, List<string>> Lost => _lost;

    /// <summary>Ids for which the list gives no day, so that the day asked for was taken.</summary>
    public List<string> Undated { get; } = [];

    /// <param name="item">As taken.</param>
    /// <param name="place">Sheet and row.</param>
    /// <param name="against">What the row says against it.</param>
    public void Add(Item item, string place, IReadOnlyList<AgainstItem> against)
    {
        var reasons = against.Where(a => a.Means >= UseMeaning.Withdrawn).ToList();
        foreach (var reason in reasons.Count == 0 ? against.Take(1) : reasons.Take(1))
            Note(reason.Means is UseMeaning.Lost ? _lost : _byReason, reason.Why, item.Id!);
        if (reasons.Count == 0)
            return;
        var day = reasons.Select(r => r.Day(asOf)).FirstOrDefault(d => d is not null);
        if (day is null)
            Undated.Add(item.Id!);
        var note =
            $"taken from the owner's list {fileName}, {place}: "
            + $"{string.Join("; ", reasons.Select(r => r.Why).Distinct(StringComparer.Ordinal))}";
        var key = (item.Id!, day ?? asOf);
        _examinations[key] = _examinations.TryGetValue(key, out var there)
            ? Withdrawal(item, key.Item2, $"{there.Observations[0].Note}; {note}")
            : Withdrawal(item, key.Item2, note);
    }

    private static void Note(SortedDictionary<string, List<string>> reasons, string reason, string id)
    {
        if (!reasons.TryGetValue(reason, out var ids))
            reasons[reason] = ids = [];
        ids.Add(id);
    }

    private Examination Withdrawal(Item item, LocalDate day, string note) =>
        new()
        {
            Item = item.Id,
            ExaminedOn = day,
            Conclusion = Conclusion.Withdraw,
            Observations =
            [
                new Observation
                {
                    Criterion = Criterion(item.Category),
                    StateAsTyped = Core.Records.Words.States.WordFor(ObservedState.NotExamined),
                    State = ObservedState.NotExamined,
                    Note = note.Length <= LongestNote ? note : note[..(LongestNote - 1)] + "…",
                },
            ],
        };

    private string Criterion(string? category) =>
        rules.FindCategory(category) is { } known && known.Find(Identity) is null ? known.Criteria[0].Id : Identity;
}
