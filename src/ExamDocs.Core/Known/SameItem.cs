namespace ExamDocs.Core.Known;

/// <summary>Tells from their particulars whether two entries are one item, might be, or are two.</summary>
internal static class SameItem
{
    /// <summary>One item, answers that somebody gave aside.</summary>
    /// <param name="later">Of the two the one that tells of the later day.</param>
    /// <param name="earlier">The other.</param>
    public static bool IsSame(KnownEntry later, KnownEntry earlier)
    {
        var (a, b) = (later.Particulars, earlier.Particulars);
        return a.SharesId(b)
            && ((a.SharesOwner(b) && !a.Contradicts(b)) || (Particulars.Agree(a.Maker, b.Maker) && Particulars.Agree(a.Serial, b.Serial)));
    }

    /// <summary>Nothing says that they are one item, and something that they could be: somebody has to say which.</summary>
    /// <param name="entry">Of the record that is looked at.</param>
    /// <param name="other">Of another.</param>
    /// <param name="isBatch">The serial is a batch number.</param>
    public static bool MustBeAsked(KnownEntry entry, KnownEntry other, bool isBatch)
    {
        var (a, b) = (entry.Particulars, other.Particulars);
        var owner = a.SharesOwner(b);
        if (!a.SharesId(b))
            return !isBatch && Particulars.Agree(a.Serial, b.Serial) && (owner ? IsOneKindOrUnknown(a, b) : IsOneKind(a, b));
        return owner ? a.Contradicts(b) : !a.Contradicts(b);
    }

    private static bool IsOneKind(Particulars a, Particulars b) =>
        Particulars.Agree(a.Maker, b.Maker) && Particulars.Agree(a.Category, b.Category);

    /// <summary>Within one owner's kit a maker or category left out must not hide the serial.</summary>
    private static bool IsOneKindOrUnknown(Particulars a, Particulars b) =>
        !Particulars.Differ(a.Maker, b.Maker) && !Particulars.Differ(a.Category, b.Category);

    /// <summary>
    /// It says so itself. Of another owner's items only one that nothing contradicts is meant: many firms have an item 1. One that
    /// something contradicts is meant only where it comes before: the tag may be on another item since. An item beside it in its
    /// own record has its own id now.
    /// </summary>
    public static bool IsFormerly(KnownEntry entry, KnownEntry former) =>
        Particulars.Agree(entry.Particulars.Formerly, former.Particulars.Id)
        && !entry.IsBeside(former)
        && (
            !entry.Particulars.Contradicts(former.Particulars)
            || (entry.Particulars.SharesOwner(former.Particulars) && former.Day <= entry.Day)
        );
}
