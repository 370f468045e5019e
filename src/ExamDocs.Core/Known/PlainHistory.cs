using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>
/// Recognises an item about which there is nothing to find out: each of the visits records this one item, always under one id and owner and
/// with particulars that agree letter by letter, on no other thing and not withdrawn; nobody repaired it, released it or said that
/// it is another. Then all of them are about it, and nothing stands against it. Everything else is left to <see cref="WhatIsKnown"/>.
/// </summary>
public static class PlainHistory
{
    /// <param name="asked">A record with one row: the item as somebody would type it today.</param>
    /// <param name="visits">All visits that name it, with the rows alone that share a key with it.</param>
    public static bool Is(ExaminationRecord asked, IReadOnlyList<KnownVisit> visits)
    {
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(visits);
        if (asked.Items is not [{ Id: { } id } item] || Folded.Keys(id).Count == 0 || SaysMore(item))
            return false;
        var owner = Owner(asked);
        var rows = new List<Item>(visits.Count + 1) { item };
        foreach (var visit in visits)
        {
            if (visit.IsUndecided || visit.Record.Items is not [var row] || !IsAlone(visit, id) || SaysMore(row))
                return false;
            if (
                !string.Equals(row.Id, id, StringComparison.Ordinal) || !string.Equals(Owner(visit.Record), owner, StringComparison.Ordinal)
            )
                return false;
            rows.Add(row);
        }
        return Particulars.Compared.All(member => rows.Select(member.Of).OfType<string>().Distinct(StringComparer.Ordinal).Count() <= 1);
    }

    private static bool SaysMore(Item item) =>
        item is not { FittedTo: null, Formerly: null, NotTheSameAs.Count: 0 } || item.Status is ItemStatus.Destroyed;

    /// <summary>The visit names nothing else, withdraws nothing, and nothing was done to the item.</summary>
    private static bool IsAlone(KnownVisit visit, string id) =>
        visit.Record is { Renewals.Count: 0, Remedies.Count: 0, Releases.Count: 0, Disposals.Count: 0 }
        && visit.Record.Examinations.All(e => string.Equals(e.Item, id, StringComparison.Ordinal))
        && visit.Outcomes.All(o => string.Equals(o.Item, id, StringComparison.Ordinal) && o.Outcome is not Outcome.Withdraw);

    private static string Owner(ExaminationRecord record) => FirmName.Fold(record.Visit.HiredFrom?.Name ?? record.Visit.Employer?.Name);
}
