using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>Items that an earlier version of the visit has and this one leaves out: their outcomes still hold.</summary>
internal static class LeftOutItems
{
    /// <param name="visit">The record under check.</param>
    /// <param name="items">Its items, and those of the other records.</param>
    /// <param name="others">Visits of other records.</param>
    public static IEnumerable<string> Of(ExaminationRecord visit, KnownItems items, IReadOnlyList<KnownVisit> others)
    {
        var versions = others.Where(v => KnownVisit.AreVersions(v.Record, visit)).ToHashSet();
        var here = items.Current.SelectMany(items.SameAs).ToHashSet();
        return items
            .Past.Where(e =>
                versions.Contains(e.Visit)
                && !e.IsNameAlone
                && !here.Contains(e)
                // Under one id it is the item corrected, also where a particular no longer agrees.
                && !items.Current.Any(c => c.Particulars.SharesId(e.Particulars))
                && !here.Any(h => versions.Contains(h.Visit) && h.Particulars.SharesId(e.Particulars))
            )
            .Select(e => e.Item.Id!)
            .Distinct(StringComparer.Ordinal);
    }
}
