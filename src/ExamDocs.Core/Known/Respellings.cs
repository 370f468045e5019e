using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>What is written differently from the last record of the same item. Each gives a finding.</summary>
internal static class Respellings
{
    public static IEnumerable<Respelling> Of(KnownEntry entry, IReadOnlyList<KnownEntry> same)
    {
        if (same.LastOrDefault(e => !e.IsNameAlone && e.Day <= entry.Day) is not { } last)
            yield break;
        var differing = entry.Particulars.ContradictsIn(last.Particulars).ToHashSet(StringComparer.Ordinal);
        if (!string.Equals(entry.Item.Id, last.Item.Id, StringComparison.Ordinal) && entry.Particulars.SharesId(last.Particulars))
            yield return new Respelling(entry.Item.Id!, "id", last.Item.Id!);
        foreach (var (member, of) in Particulars.Compared)
        {
            if (
                of(entry.Item) is { } here
                && of(last.Item) is { } there
                && !string.Equals(here, there, StringComparison.Ordinal)
                && (member is not "manufactured" || differing.Contains(member))
            )
                yield return new Respelling(entry.Item.Id!, member, there);
        }
    }
}
