using System.Globalization;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Says what a register knows of one item today. It decides nothing anew: it takes the latest decision, what ended since, and what is
/// issued, and shows the worst of them.
/// </summary>
internal sealed class StandingToday
{
    private const string NotExamined = "U0";

    private readonly DocumentRegister _register;
    private readonly IReadOnlyList<ItemEntry> _entries;
    private readonly LocalDate _today;

    /// <param name="register">The register.</param>
    /// <param name="entries">All of one item; at least one.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public StandingToday(DocumentRegister register, IReadOnlyList<ItemEntry> entries, LocalDate today)
    {
        (_register, _today) = (register, today);
        _entries = [.. entries.OrderByDescending(e => e.Day).ThenByDescending(e => e.Visit.Visit)];
    }

    public string Id => _entries[0].Item.Id!;

    public string? Owner => _entries[0].Owner;

    /// <summary>By itself, without what is fitted to it and what it may be. Worked out only where it is asked for.</summary>
    public FoundItem Alone => field ??= Decided();

    /// <summary>As the latest visit recorded it that has a row for it.</summary>
    private Item Item => (_entries.FirstOrDefault(e => e.HasRow) ?? _entries[0]).Item;

    /// <summary>The id of what it is fitted to, by the latest that any record says of it; null where it is fitted to nothing.</summary>
    /// <param name="renewals">Those that name it, with their days.</param>
    public string? Whole(IEnumerable<(Renewal Renewal, LocalDate Day)> renewals)
    {
        var (whole, since) = _entries.Where(e => e.Item.FittedTo is { Length: > 0 }).Select(e => (e.Item.FittedTo, e.Day)).FirstOrDefault();
        foreach (var (renewal, day) in renewals.OrderBy(r => r.Day).Where(r => whole is null || r.Day >= since))
        {
            if (Folded.Same(renewal.FittedPart, Id))
                (whole, since) = (renewal.Item, day);
            else if (Folded.Same(renewal.Item, whole))
                whole = null;
        }
        return whole;
    }

    /// <summary>The keys of every serial number that a visit recorded of it.</summary>
    public IReadOnlyList<string> SerialKeys =>
        field ??= [.. _entries.SelectMany(e => Folded.Keys(e.Item.Serial)).Distinct(StringComparer.Ordinal)];

    /// <summary>
    /// Whether both can be one thing under two tags: serial number and maker do not tell them apart. Two tags of one visit share a
    /// batch number, which identifies nothing.
    /// </summary>
    public bool MayBe(StandingToday other) =>
        !ReferenceEquals(this, other)
        && SerialKeys.Intersect(other.SerialKeys, StringComparer.Ordinal).Any()
        && !Folded.Differ(Item.Maker, other.Item.Maker)
        && !_entries.Any(e => other._entries.Any(o => o.Visit.Visit == e.Visit.Visit));

    /// <summary>The item with what is fitted to it and what it may be under another tag: it stands no better than any of these.</summary>
    public FoundItem With(IReadOnlyList<FoundItem> parts, IEnumerable<FoundItem> others)
    {
        var fitted = parts.Where(p => p.Standing is not Standing.NotIssued).ToList();
        var worst = fitted
            .Select(p => (Item: p, Why: $"{p.Id}, which is fitted to it: {p.Why}"))
            .Concat(
                others
                    .Where(o => o.Standing is Standing.Withdrawn or Standing.Held)
                    .Select(o => (Item: o, Why: $"{o.Id} has the same serial number: {o.Why}"))
            )
            .OrderBy(w => w.Item.Standing)
            .FirstOrDefault();
        return worst.Item is null || worst.Item.Standing >= Alone.Standing
            ? Alone with
            {
                UsableThrough = fitted.Aggregate(Alone.UsableThrough, (day, part) => Earlier(day, part.UsableThrough)),
            }
            : Alone with
            {
                Standing = worst.Item.Standing is Standing.Withdrawn ? Standing.Held : worst.Item.Standing,
                Why = worst.Why,
                UsableThrough = null,
            };
    }

    private FoundItem Decided()
    {
        var history = _entries.Select(Visit).ToList();
        var at = Math.Max(0, _entries.ToList().FindIndex(e => e.Outcome.Codes is not [NotExamined]));
        var (standing, why) = Of(_entries[at], history[at]);
        return new FoundItem
        {
            Id = Id,
            Owner = Owner,
            Item = Item,
            Standing = standing,
            Why = why,
            UsableThrough = standing is Standing.InService ? Through(_entries[at].Outcome) : null,
            History = history,
        };
    }

    private (Standing Standing, string Why) Of(ItemEntry decided, FoundVisit visit)
    {
        var outcome = decided.Outcome;
        if (decided.IsOf(Outcome.Withdraw))
            return (Standing.Withdrawn, $"withdrawn {On(decided)}: {string.Join(" ", outcome.Codes)}");
        if (_entries.FirstOrDefault(e => e.IsOf(Outcome.Withdraw) && !WasKnown(e, to: decided)) is { } late)
            return (Standing.Held, $"withdrawn {On(late)}, which the examination {On(decided)} did not know");
        if (!decided.IsOf(Outcome.Fit) && !decided.IsOf(Outcome.FitUntil))
            return (Standing.Held, $"not determined {On(decided)}: {string.Join(" ", outcome.Codes)}");
        if (_register.Visits.EndsOf(decided.Visit.Visit).FirstOrDefault(e => IsItem(e.End.Item, decided)).End is { } end)
            return (Standing.Withdrawn, $"{end.Why}, since {Day(end.On)}");
        if (outcome.Until < _today)
            return (Standing.Withdrawn, $"not to be used after {Day(outcome.Until.Value)}");
        if (outcome.NextBy is not { } next)
            return (Standing.Held, $"no next examination is recorded {On(decided)}");
        if (next < _today)
            return (Standing.Overdue, $"the next examination was due by {Day(next)}");
        if (!visit.Documents.Any(d => d is { IsCurrent: true, Kind: "report" }))
            return (Standing.NotIssued, $"found {outcome.Outcome} {On(decided)}, and no current report says so");
        return (Standing.InService, $"{outcome.Outcome} {On(decided)}, until {Day(Through(outcome)!.Value)}");
    }

    /// <summary>
    /// Whether a visit could be known when another was decided. Numbers of two registers cannot be compared: then it was not.
    /// </summary>
    private static bool WasKnown(ItemEntry earlier, ItemEntry to) =>
        earlier.Visit.Visit == to.Visit.Visit || (to.Visit.Origin is null && earlier.Visit.Visit <= to.Visit.Seen);

    private FoundVisit Visit(ItemEntry entry) =>
        new(
            entry.Visit.Visit,
            entry.Visit.Reference,
            entry.Visit.Employer,
            entry.Outcome.ExaminedOn ?? entry.Visit.ExaminedOn,
            entry.Outcome.Outcome,
            entry.Outcome.Codes,
            entry.Outcome.Until,
            entry.Outcome.NextBy,
            [
                .. _register
                    .About(entry.Item.Id!, entry.Visit.Visit)
                    .Where(d => d.State is DocumentState.Issued)
                    .Select(d => Document(d, entry)),
            ]
        );

    private static FoundDocument Document(DocumentStatus document, ItemEntry entry)
    {
        var line = document.EndedLines.FirstOrDefault(l => IsItem(l.Item, entry));
        return new(
            document.Number,
            document.Kind,
            document.IsCurrent && line is null,
            document.Ended is { } end
                ? end is DocumentEnd.Replaced
                    ? $"replaced by {string.Join(", ", document.ReplacedBy)}"
                    : EndedWords.Of(document)
                : line is not null
                    ? EndedWords.Of(line)
                    : null
        );
    }

    private static bool IsItem(string item, ItemEntry entry) => string.Equals(item, entry.Item.Id, StringComparison.Ordinal);

    private static LocalDate? Through(RememberedOutcome outcome) => Earlier(outcome.Until, outcome.NextBy);

    private static LocalDate? Earlier(LocalDate? one, LocalDate? other) => one is null || other < one ? other ?? one : one;

    private static string On(ItemEntry entry) => entry.Day == LocalDate.MinIsoValue ? "on a day not recorded" : $"on {Day(entry.Day)}";

    private static string Day(LocalDate day) => day.ToString("d MMM uuuu", CultureInfo.InvariantCulture);
}
