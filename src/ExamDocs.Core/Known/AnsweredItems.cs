using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>
/// The answers of all records that an item is not a certain other one. An answer ends the search for an earlier withdrawal, so it
/// counts only with a reason, and only where a marking differs or the answering record has both items.
/// </summary>
internal sealed class AnsweredItems
{
    private readonly KnownItems _items;
    private readonly IReadOnlyList<KnownEntry> _answering;

    public AnsweredItems(KnownItems items, IReadOnlyList<KnownEntry> all) =>
        (_items, _answering) = (items, [.. all.Where(e => e.Item.NotTheSameAs.Count > 0 && !items.IsReplaced(e))]);

    /// <summary>True where no record gives an answer.</summary>
    public bool IsEmpty => _answering.Count == 0;

    /// <summary>
    /// True where an answer says that the entry is not the other item: the entry's own answer, or that of another record about the
    /// same item. An answer of another record counts where that record has both items, or where the entry has the marking of the
    /// item that was answered for.
    /// </summary>
    public bool IsAnother(KnownEntry entry, KnownEntry other)
    {
        if (IsEmpty)
            return false;
        if (entry.Item.NotTheSameAs.Any(a => IsSound(entry, a, other)) && !_items.IsReplaced(entry))
            return true;
        // An answer follows the marking and not the id: under the same id there may be a third item by now.
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

    /// <summary>The faults in the answers that the record under check gives for an item.</summary>
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
        // An id that was only named has no particulars, so no answer about it could be sound.
        var meant = named.Exists(e => !e.IsNameAlone) ? named.FindAll(e => !e.IsNameAlone) : named;
        if (answer.Document is { } number && !meant.Exists(e => IsAbout(e, number)))
            return AnswerFaultKind.UnknownDocument;
        return meant.Exists(e => IsSound(entry, answer, e)) ? null : AnswerFaultKind.NothingDiffers;
    }

    private bool IsSound(KnownEntry entry, DifferentItem answer, KnownEntry other) =>
        !entry.IsBeside(other)
        && Particulars.Agree(Folded.Keys(answer.Id), other.Particulars.Id)
        && WithdrawalEnd.IsSentence(answer.Because)
        // A row that says both, it was this one and it was not, takes nothing back by the second: only a marking tells them apart.
        && (
            entry.Particulars.IsMarkedOtherwise(other.Particulars) || (!SameItem.IsFormerly(entry, other) && AreBothRecorded(entry, other))
        );

    /// <summary>
    /// True where the entry's record has a row of its own for the other item, under another id: then somebody had both at hand. An
    /// id that a repair or a renewal only names proves no second item.
    /// </summary>
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
