using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>What the item is, and whether the maker of what it is fitted to permits it there.</summary>
internal static class IdentityEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons)
    {
        yield return Marks(item.Item);
        yield return item.Item.Manufactured is { } made
            ? Entry(Bearing.For, w => w.Evidence.Made(made))
            : Entry(Bearing.Open, w => w.Evidence.ManufactureNotRecorded);
        if (item.Item.Declaration is { Reference: { } reference } declaration)
            yield return Entry(Bearing.For, w => w.Evidence.Declaration(reference, declaration.On));
        foreach (
            var entry in item.Wholes.SelectMany(whole => Permitted(item, whole)).Concat(Ledger.Reasons(reasons, Heading.Identity, "W8"))
        )
            yield return entry;
    }

    private static LedgerEntry Marks(Item item) =>
        Entry(item.Serial is null && item.OwnersMark is null ? Bearing.Open : Bearing.For, w => w.Evidence.Marks(item));

    private static IEnumerable<LedgerEntry> Permitted(ItemCase item, ItemCase whole)
    {
        var lists = whole.Limits.All.Where(l => l.PermittedParts is not null).ToList();
        if (lists.Count == 0)
            return [Entry(Bearing.Neutral, w => w.Evidence.FittedWithoutList(w.Name(whole.Item)))];
        return lists
            .Where(l => l.Permits(item.Item.PartNumber) is true)
            .Select(l => new LedgerEntry(
                Heading.Identity,
                Bearing.For,
                new(w => w.Evidence.PartPermitted(item.Item.PartNumber, w.Name(whole.Item))),
                LimitsSourceText.Of(l)
            ));
    }

    private static LedgerEntry Entry(Bearing bearing, Func<SentenceBook, string> say) =>
        new(Heading.Identity, bearing, new(say), Ledger.TheRecord);
}
