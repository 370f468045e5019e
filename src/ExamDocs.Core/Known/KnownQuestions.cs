using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>
/// Which items of a record might be one that was withdrawn, destroyed, put in quarantine, lost or held, or has an open defect, under
/// other particulars. Sound kit is never asked about.
/// </summary>
internal sealed class KnownQuestions(KnownItems items, KnownFittings fittings, KnownAside aside)
{
    private readonly Dictionary<KnownEntry, (EarlierState State, KnownEntry Entry, LocalDate On, string? Document)?> _states = [];

    /// <summary>One question for each other item that it might be.</summary>
    public IEnumerable<IdentityQuestion> Of(KnownEntry entry)
    {
        // Where only a third record joins the two, by its formerly, it stays open which of the two this is.
        var same = items.SameAs(entry).Where(s => items.CountsFor(entry, s)).ToList();
        var asked = new HashSet<KnownEntry>(same);
        // Latest first: the question then shows the other item as it was last recorded, and is asked once.
        foreach (var other in items.NearBefore(entry).OrderBy(o => o.Day).ThenBy(o => o.Visit.Number).Reverse())
        {
            if (
                asked.Contains(other)
                || !SameItem.MustBeAsked(entry, other, items.IsBatch(entry) && items.IsBatch(other))
                || items.Answers.IsAnother(entry, other)
                || IsKnown(entry, other, same)
            )
                continue;
            asked.Add(other);
            if (StateOf(other) is not { } state)
                continue;
            // One question for one thing; where nothing is against it, each entry that is said to be it is still looked at by itself.
            asked.UnionWith(items.SameAs(other));
            yield return Question(entry, other, state);
        }
    }

    /// <summary>
    /// True where earlier entries settle which item this is. They do not settle it against an item of the same owner that was
    /// recorded on the same day or later: the mistake may be in the record that withdrew that item.
    /// </summary>
    private bool IsKnown(KnownEntry entry, KnownEntry other, IReadOnlyList<KnownEntry> same)
    {
        // A formerly that a particular contradicts proves nothing.
        var vouching = same.Where(s => !s.IsNameAlone && s.Day < entry.Day && !WasHeld(s) && items.AreOneThing(entry, s))
            .Where(s => !items.IsReplaced(s))
            .ToList();
        return vouching.Count > 0 && !(entry.Particulars.SharesOwner(other.Particulars) && vouching.TrueForAll(s => other.Day >= s.Day));
    }

    /// <summary>
    /// An entry that was itself held settles nothing: perhaps it was held because this very question had no answer. Else a question
    /// that nobody answered would be gone at the next visit.
    /// </summary>
    private static bool WasHeld(KnownEntry entry) => entry.Outcomes.Any(o => o.Codes.Any(c => c is ['U', ..] and not "U0"));

    private static IdentityQuestion Question(
        KnownEntry entry,
        KnownEntry other,
        (EarlierState State, KnownEntry Entry, LocalDate On, string? Document) state
    )
    {
        var member = entry.Particulars.ContradictsIn(other.Particulars).FirstOrDefault() ?? "";
        string? Typed(Item item) =>
            Particulars
                .Compared.Where(c => string.Equals(c.Member, member, StringComparison.Ordinal))
                .Select(c => c.Of(item))
                .FirstOrDefault();
        return new IdentityQuestion(entry.Item.Id!, other.Item.Id!, state.On, state.State)
        {
            Document = state.Document,
            Member = member,
            Here = Typed(entry.Item),
            There = Typed(other.Item),
            OtherOwner = !entry.Particulars.SharesOwner(other.Particulars),
        };
    }

    /// <summary>What is open against the item; null where nothing is.</summary>
    private (EarlierState State, KnownEntry Entry, LocalDate On, string? Document)? StateOf(KnownEntry entry)
    {
        if (_states.TryGetValue(entry, out var known))
            return known;
        var same = items.SameAs(entry);
        // What was only said to be it, although something contradicts, adds what is against it, and takes nothing away.
        List<KnownEntry> surely = [entry, .. same.Where(e => items.AreOneThing(entry, e))];
        // So does another row of the record that says by an older id that it is this one.
        var others = items.RowsOf(entry).SelectMany(items.SameAs);
        return _states[entry] = Adverse(surely) ?? Adverse([entry, .. same]) ?? Adverse([.. same.Concat(others).Prepend(entry).Distinct()]);
    }

    private (EarlierState, KnownEntry, LocalDate, string?)? Adverse(IReadOnlyList<KnownEntry> entries)
    {
        var open = fittings.Open(entries);
        if (open.Count > 0)
            return (
                open.Any(w => w.Codes.Contains("W11", StringComparer.Ordinal)) ? EarlierState.Destroyed : EarlierState.Withdrawn,
                entries[0],
                open[^1].On,
                open[^1].Document
            );
        if (aside.Quarantines(entries[0].Item.Id!, entries).MaxBy(q => q.On) is { } quarantine)
            return (EarlierState.Quarantined, entries[0], quarantine.On!.Value, null);
        if (aside.LostOn(entries) is { } lost)
            return (EarlierState.Lost, entries[0], lost, null);
        if (KnownEntry.LatestOf(entries, areWithdrawalsEnded: true) is not ({ } last, { } outcome))
            return null;
        if (outcome.Outcome is Outcome.Undetermined)
            return (EarlierState.Held, last, last.Day, outcome.Document);
        return
            last.Visit.Record.Examinations.Any(e =>
                last.IsMine(e.Item)
                && e.DayAt(last.Visit.Record.Visit) == outcome.ExaminedOn
                && e.Defects.Any(d => d.Danger is Danger.Later)
            ) && !IsRemedied(entries, last.Day)
            ? (EarlierState.LaterDefect, last, last.Day, outcome.Document)
            : null;
    }

    private bool IsRemedied(IReadOnlyList<KnownEntry> entries, LocalDate since) =>
        entries
            .Where(e => !items.IsReplaced(e))
            .Any(e =>
                e.Visit.Record.Remedies.Any(r => e.IsMine(r.Item) && r.DoneOn >= since)
                || e.Visit.Record.Renewals.Any(r => e.IsMine(r.Item) && r.DoneOn >= since)
            );
}
