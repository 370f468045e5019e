using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>What records say of an item that nobody examined for it: that it was put aside, lost, or held.</summary>
internal static class KnownAside
{
    /// <summary>
    /// Whether an item was put aside or lost since its latest examination, or a record held it: what that examination found counts no more.
    /// </summary>
    /// <param name="entries">All entries of the item in other records.</param>
    /// <param name="latest">Its latest examination; null for none.</param>
    public static bool Since(IReadOnlyList<KnownEntry> entries, (KnownEntry? Entry, KnownOutcome? Outcome) latest)
    {
        return entries.Any(e =>
            !IsReplaced(e, entries)
            && (
                (e.Item.Status is ItemStatus.Lost && IsLater(e, e.Day))
                || (e.Outcomes.Any(IsHeldUnseen) && IsLater(e, e.Day))
                || DisposalsOf(e).Any(d => d.Action is not DisposalAction.Destroyed && IsLater(e, d.On ?? e.Day))
            )
        );

        bool IsLater(KnownEntry entry, LocalDate day) =>
            latest is not ({ } examined, { ExaminedOn: { } on }) || (day, entry.Visit.Number).CompareTo((on, examined.Visit.Number)) > 0;
    }

    /// <summary>
    /// Quarantines in other records that no release there ended, the id as in this record. One of an item that was withdrawn then is left
    /// out: it ends with the withdrawal.
    /// </summary>
    /// <param name="id">The id in the record under check.</param>
    /// <param name="same">Its entries in other records.</param>
    public static IEnumerable<Disposal> Quarantines(string id, IReadOnlyList<KnownEntry> same) =>
        from entry in same
        where !IsReplaced(entry, same)
        from disposal in DisposalsOf(entry)
        where disposal.Action is DisposalAction.Quarantined
        let day = disposal.On ?? entry.Day
        where !WasWithdrawn(same, day) && !same.Any(e => e.Visit.Record.Releases.Any(r => e.IsMine(r.Item) && r.On >= day))
        select disposal with
        {
            Item = id,
            On = day,
        };

    /// <summary>Held without an examination, and not only for want of one.</summary>
    private static bool IsHeldUnseen(KnownOutcome outcome) =>
        outcome is { Outcome: Outcome.Undetermined, ExaminedOn: null } && outcome.Codes is not ["U0"];

    private static IEnumerable<Disposal> DisposalsOf(KnownEntry entry) => entry.Visit.Record.Disposals.Where(d => entry.IsMine(d.Item));

    private static bool WasWithdrawn(IReadOnlyList<KnownEntry> entries, LocalDate day) =>
        KnownEntry.LatestOf([.. entries.Where(e => e.Day <= day)]).Outcome is { Outcome: Outcome.Withdraw };

    private static bool IsReplaced(KnownEntry entry, IReadOnlyList<KnownEntry> entries) =>
        entries.Any(later =>
            !later.IsNameAlone && later.Visit.Number > entry.Visit.Number && KnownVisit.IsOneVisit(later.Visit.Record, entry.Visit.Record)
        );
}
