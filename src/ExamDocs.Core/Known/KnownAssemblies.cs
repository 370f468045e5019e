using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>What other records have on the items of this record, and what these are on in other records.</summary>
internal sealed class KnownAssemblies(KnownItems items, KnownFittings fittings, KnownAside aside)
{
    /// <summary>Parts on an item that are not in its record, each with what is known of it.</summary>
    public IEnumerable<PartElsewhere> PartsOn(KnownEntry whole)
    {
        IReadOnlyList<KnownEntry> self = [whole, .. items.SameAs(whole)];
        var done = new HashSet<KnownEntry>();
        foreach (var part in fittings.EverOn(self))
        {
            IReadOnlyList<KnownEntry> entries = [part, .. items.SameAs(part)];
            if (
                !done.Add(entries.MinBy(e => (e.Day, e.Visit.Number, e.Item.Id))!)
                || fittings.WholesOf(WithCurrent(entries), self.Contains, whole.Day).Count == 0
            )
                continue;
            if (!items.Current.Any(c => !c.IsNameAlone && (entries.Contains(c) || IsAmong(c, entries))))
            {
                var status = StatusOf(entries, whole.Item.Id!, [], whole.Day);
                if (status.Outcome is not Outcome.Undetermined || !entries.Any(e => e.Visit.IsUndecided))
                    yield return status;
            }
        }
    }

    /// <summary>Items of other records that an item of this one is fitted to.</summary>
    public IEnumerable<WholeElsewhere> WholesOf(KnownEntry part) =>
        from whole in fittings.WholesOf([part, .. items.SameAs(part)], upTo: part.Day)
        where !items.Current.Any(c => !c.IsNameAlone && ReferenceEquals(c, whole))
        let known = items
            .SameAs(whole)
            .Append(whole)
            .Where(e => e is { IsCurrent: false, IsNameAlone: false })
            // An id that was only named may mean an item of this record as well as one of another: this record's own is left out.
            .Where(e => !items.RowsOf(e).Any())
            .ToList()
        where known.Count > 0
        let latest = known.OrderBy(e => e.Day).ThenBy(e => e.Visit.Number).Last()
        group latest by (latest.Item.Id!, latest.Visit) into same
        let last = same.First()
        select new WholeElsewhere(
            last.Item.Id!,
            part.Item.Id!,
            [.. last.Visit.Record.Limits.Where(l => l.PermittedParts is { Count: > 0 } && MayBeOf(l, last.Item))]
        );

    /// <summary>With the entries of this record that are the same item: its rows and renewals say something of the item too.</summary>
    private List<KnownEntry> WithCurrent(IReadOnlyList<KnownEntry> entries) =>
        [.. entries.Concat(items.Current.Where(c => IsAmong(c, entries))).Distinct()];

    /// <summary>An id that a record only names is no proof that two entries are one item.</summary>
    private bool IsAmong(KnownEntry current, IReadOnlyList<KnownEntry> entries) =>
        items.SameAs(current).Any(e => !e.IsNameAlone && entries.Contains(e));

    private PartElsewhere StatusOf(IReadOnlyList<KnownEntry> entries, string whole, HashSet<KnownEntry> above, LocalDate on)
    {
        var past = entries.Where(e => !e.IsCurrent).ToList();
        var examined = KnownEntry.LatestOf(past);
        var latest = examined.Outcome;
        // What was only said to be this part, although something contradicts, does not make up for what is known of the part itself.
        var surely = KnownEntry.LatestOf([.. past.Where(e => items.AreOneThing(entries[0], e))]).Outcome;
        var last = past.Where(e => !e.IsNameAlone).DefaultIfEmpty(entries[0]).MaxBy(e => (e.Day, e.Visit.Number))!;
        var open = fittings.Open(past, on);
        var own = new PartElsewhere(
            last.Item.Id!,
            whole,
            open.Count > 0 ? Outcome.Withdraw
                : IsFit(latest) && (surely is null || IsFit(surely)) && !aside.Since(past, examined) ? Outcome.Fit
                : Outcome.Undetermined
        )
        {
            PartNumber = last.Item.PartNumber,
            Until = Earlier(latest?.Until, surely?.Until),
            NextBy = Earlier(latest?.NextBy, surely?.NextBy),
            Document = open.Count > 0 ? open[0].Document : latest?.Document,
        };
        above.UnionWith(entries);
        return fittings
            .EverOn(past)
            .Where(sub => !sub.IsCurrent && !above.Contains(sub))
            .Select(sub => (IReadOnlyList<KnownEntry>)[sub, .. items.SameAs(sub)])
            .Where(sub => fittings.WholesOf(sub).Any(w => past.Exists(p => fittings.IsOne(w, p))))
            .Aggregate(own, (worst, sub) => Worse(worst, StatusOf(sub, own.Id, above, on)));
    }

    private static bool IsFit(KnownOutcome? outcome) => outcome is { Outcome: Outcome.Fit or Outcome.FitUntil };

    /// <summary>A whole is never better than a part that is on it.</summary>
    private static PartElsewhere Worse(PartElsewhere whole, PartElsewhere part) =>
        whole with
        {
            Outcome = part.Outcome > whole.Outcome ? part.Outcome : whole.Outcome,
            Until = Earlier(whole.Until, part.Until),
            NextBy = Earlier(whole.NextBy, part.NextBy),
        };

    /// <summary>Two parts may have one id: the worse of them decides on the whole.</summary>
    public static PartElsewhere WorstOf(IEnumerable<PartElsewhere> parts) =>
        parts
            .OrderByDescending(p => p.Outcome)
            .Aggregate(
                (worst, other) => worst with { Until = Earlier(worst.Until, other.Until), NextBy = Earlier(worst.NextBy, other.NextBy) }
            );

    private static LocalDate? Earlier(LocalDate? one, LocalDate? other) =>
        one is null ? other
        : other is null || one < other ? one
        : other;

    private static bool MayBeOf(MakersLimits limits, Item item) =>
        !Particulars.Differ(Identity.Folded.Keys(limits.Maker), Identity.Folded.Keys(item.Maker))
        && !Particulars.Differ(Identity.Folded.Keys(limits.Model), Identity.Folded.Keys(item.Model))
        && !Particulars.Differ(Identity.Folded.Keys(limits.PartNumber), Identity.Folded.Keys(item.PartNumber));
}
