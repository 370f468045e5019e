using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>The answers of all records that an item is not another one. An answer without a ground counts for nothing.</summary>
internal sealed class AnsweredItems
{
    private readonly KnownItems _items;
    private readonly IReadOnlyList<KnownEntry> _answering;

    public AnsweredItems(KnownItems items, IReadOnlyList<KnownEntry> all) =>
        (_items, _answering) = (items, [.. all.Where(e => e.Item.NotTheSameAs.Count > 0)]);

    /// <summary>No record answers anything.</summary>
    public bool IsEmpty => _answering.Count == 0;

    /// <summary>
    /// It is known to be another item: the entry says so, or an earlier one of the same item did, and the entry bears that
    /// one's marking or the two things were in one record.
    /// </summary>
    public bool IsAnother(KnownEntry entry, KnownEntry other)
    {
        if (IsEmpty)
            return false;
        if (entry.Item.NotTheSameAs.Any(a => IsSound(entry, a, other)))
            return true;
        return _answering.Any(q =>
            !ReferenceEquals(q, entry)
            && !ReferenceEquals(q, other)
            && !q.IsCurrent
            && SameItem.IsSame(entry, q)
            && q.Item.NotTheSameAs.Any(a => IsSound(q, a, other))
            && (
                AreBothRecorded(q, other)
                || (
                    entry.Particulars.SharesMarking(q.Particulars)
                    && !entry.Particulars.SharesMarking(other.Particulars)
                    && entry.Particulars.IsMarkedOtherwise(other.Particulars)
                )
            )
        );
    }

    /// <summary>What is wrong with the answers of an item of the record that is looked at.</summary>
    public IEnumerable<AnswerFault> FaultsOf(KnownEntry entry)
    {
        var (id, item) = (entry.Item.Id!, entry.Item);
        if (item.Formerly is not null && !_items.WithId(entry.Particulars.Formerly).Any(e => !e.IsCurrent))
            yield return new AnswerFault(id, "/formerly", AnswerFaultKind.Unknown);
        foreach (var (n, answer) in item.NotTheSameAs.Index())
        {
            if (FaultOf(entry, answer) is { } fault)
                yield return new AnswerFault(id, FormattableString.Invariant($"/notTheSameAs/{n}"), fault);
        }
    }

    private AnswerFaultKind? FaultOf(KnownEntry entry, DifferentItem answer)
    {
        if (!WithdrawalEnd.IsSentence(answer.Because))
            return AnswerFaultKind.NoReason;
        var named = _items.WithId(Folded.Keys(answer.Id)).Where(e => !e.IsCurrent).ToList();
        if (named.Count == 0)
            return AnswerFaultKind.Unknown;
        // An id that was only named says nothing that an item could differ in.
        var meant = named.Exists(e => !e.IsNameAlone) ? named.FindAll(e => !e.IsNameAlone) : named;
        if (answer.Document is { } number && !meant.Exists(e => IsAbout(e, number)))
            return AnswerFaultKind.UnknownDocument;
        return meant.Exists(e => IsSound(entry, answer, e)) ? null : AnswerFaultKind.NothingDiffers;
    }

    private bool IsSound(KnownEntry entry, DifferentItem answer, KnownEntry other) =>
        !entry.IsBeside(other)
        && Particulars.Agree(Folded.Keys(answer.Id), other.Particulars.Id)
        && WithdrawalEnd.IsSentence(answer.Because)
        && (entry.Particulars.IsMarkedOtherwise(other.Particulars) || AreBothRecorded(entry, other));

    /// <summary>Another row of the entry's record is that other item.</summary>
    private bool AreBothRecorded(KnownEntry entry, KnownEntry other) =>
        _items
            .Near(other)
            .Any(e =>
                e.IsBeside(entry)
                && !e.IsNameAlone
                && !ReferenceEquals(e, entry)
                && !e.Particulars.SharesId(entry.Particulars)
                && KnownItems.IsSaidToBe(e, other)
            );

    private static bool IsAbout(KnownEntry entry, string number) =>
        entry.Documents.Any(d => string.Equals(d.Number, number, StringComparison.OrdinalIgnoreCase));
}
