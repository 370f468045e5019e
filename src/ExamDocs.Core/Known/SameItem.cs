namespace ExamDocs.Core.Known;

/// <summary>Decides from the particulars whether two entries are one item, might be one, or are two.</summary>
internal static class SameItem
{
    /// <summary>True where both are one item by their particulars; answers are not looked at.</summary>
    /// <param name="later">The one of the later day.</param>
    /// <param name="earlier">The other.</param>
    public static bool IsSame(KnownEntry later, KnownEntry earlier)
    {
        var (a, b) = (later.Particulars, earlier.Particulars);
        return a.SharesId(b)
            && ((a.SharesOwner(b) && !a.Contradicts(b)) || (Particulars.Agree(a.Maker, b.Maker) && Particulars.Agree(a.Serial, b.Serial)));
    }

    /// <summary>True where both could be one item and nothing settles it: then somebody has to say.</summary>
    /// <param name="entry">An entry of the record under check.</param>
    /// <param name="other">An entry of another record.</param>
    /// <param name="isBatch">True where the serial number is a batch number.</param>
    public static bool MustBeAsked(KnownEntry entry, KnownEntry other, bool isBatch)
    {
        var (a, b) = (entry.Particulars, other.Particulars);
        var owner = a.SharesOwner(b);
        if (!a.SharesId(b))
            return !isBatch && Particulars.Agree(a.Serial, b.Serial) && (owner ? IsOneKindOrUnknown(a, b) : IsOneKind(a, b));
        return owner ? a.Contradicts(b) : !a.Contradicts(b) || (Particulars.Agree(a.Serial, b.Serial) && a.MakerMayBe(b));
    }

    private static bool IsOneKind(Particulars a, Particulars b) => a.MakerMayBe(b) && Particulars.Agree(a.Category, b.Category);

    /// <summary>Within one owner's kit an empty maker or category must not hide that the serial numbers agree.</summary>
    private static bool IsOneKindOrUnknown(Particulars a, Particulars b) =>
        (a.Maker.Count == 0 || b.Maker.Count == 0 || a.MakerMayBe(b)) && !Particulars.Differ(a.Category, b.Category);

    /// <summary>
    /// True where the entry says, by <c>formerly</c>, that it is the other. An item of another owner is meant only where nothing
    /// contradicts: many firms have an item 1. Where something contradicts, only an entry of the same day or before is meant: the tag
    /// may be on another item since. An item in the same record is never meant: it has that id now.
    /// </summary>
    public static bool IsFormerly(KnownEntry entry, KnownEntry former) =>
        Particulars.Agree(entry.Particulars.Formerly, former.Particulars.Id)
        && !entry.IsBeside(former)
        && (
            !entry.Particulars.Contradicts(former.Particulars)
            || (entry.Particulars.SharesOwner(former.Particulars) && former.Day <= entry.Day)
        );
}
