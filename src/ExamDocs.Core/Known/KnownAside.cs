using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>What records say of an item that nobody examined for it: that it was put aside, lost, or held.</summary>
internal sealed class KnownAside(KnownItems items, KnownWithdrawals withdrawals, KnownReleases releases)
{
    /// <summary>
    /// Whether an item was put aside or lost since its latest examination, or a record held it: what that examination found counts no more.
    /// </summary>
    /// <param name="entries">All entries of the item in other records.</param>
    /// <param name="latest">Its latest examination; null for none.</param>
    public bool Since(IReadOnlyList<KnownEntry> entries, (KnownEntry? Entry, KnownOutcome? Outcome) latest)
    {
        return entries.Any(e =>
            (!items.IsReplaced(e, e.Day) && (IsLost(e) || e.Outcomes.Any(IsHeldUnseen)) && IsLater(e, e.Day))
            || DisposalsOf(e)
                .Any(d =>
                    d.Action is not DisposalAction.Destroyed
                    && IsLater(e, d.On ?? e.Day)
                    && (d.Action is DisposalAction.Quarantined || !items.IsReplaced(e, d.On ?? e.Day))
                )
        );

        bool IsLater(KnownEntry entry, LocalDate day) =>
            latest is not ({ } examined, { ExaminedOn: { } on }) || (day, entry.Visit.Number).CompareTo((on, examined.Visit.Number)) > 0;
    }

    /// <summary>The day on which it was last recorded as lost, where it was not examined since; null where it was not.</summary>
    /// <param name="entries">All its entries in other records.</param>
    public LocalDate? LostOn(IReadOnlyList<KnownEntry> entries)
    {
        var examinedOn = entries.SelectMany(e => e.Outcomes).Max(o => o.ExaminedOn);
        return entries
            .Where(e => IsLost(e) && !items.IsReplaced(e, e.Day) && !(e.Day < examinedOn))
            .Select(e => (LocalDate?)e.Day)
            .DefaultIfEmpty()
            .Max();
    }

    /// <summary>
    /// Quarantines in other records that no release there ended, the id as in this record. One of an item that was withdrawn by then is
    /// left out: it ends with the withdrawal. That a later version of the record has it no more does not end it.
    /// </summary>
    /// <param name="id">The id in the record under check.</param>
    /// <param name="same">Its entries in other records.</param>
    public IEnumerable<Disposal> Quarantines(string id, IReadOnlyList<KnownEntry> same) =>
        from entry in same
        from disposal in DisposalsOf(entry)
        where disposal.Action is DisposalAction.Quarantined
        let day = disposal.On ?? entry.Day
        where !withdrawals.Open(same, upTo: day).Any(w => w.On <= day) && !releases.EndQuarantine(entry, day, same)
        select disposal with
        {
            Item = id,
            On = day,
        };

    private static bool IsLost(KnownEntry entry) => entry.Item.Status is ItemStatus.Lost;

    /// <summary>Held without an examination, and not only for want of one.</summary>
    private static bool IsHeldUnseen(KnownOutcome outcome) =>
        outcome is { Outcome: Outcome.Undetermined, ExaminedOn: null } && outcome.Codes is not ["U0"];

    private static IEnumerable<Disposal> DisposalsOf(KnownEntry entry) => entry.Visit.Record.Disposals.Where(d => entry.IsMine(d.Item));
}
