using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.CaseForService;

/// <summary>What it is, and whether its maker allows it where it is.</summary>
internal static class IdentityEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons)
    {
        yield return Marks(item.Item);
        yield return item.Item.Manufactured is { } made
            ? Entry(Bearing.For, $"made {Say.When(made)}")
            : Entry(Bearing.Open, "date of manufacture not recorded");
        if (item.Item.Declaration is { Reference: { } reference } declaration)
            yield return Entry(Bearing.For, $"declaration of conformity {reference}{(declaration.On is { } on ? $" of {Say.Day(on)}" : "")}");
        foreach (var entry in item.Wholes.SelectMany(whole => Permitted(item, whole)).Concat(Ledger.Reasons(reasons, Heading.Identity, "W8")))
            yield return entry;
    }

    private static LedgerEntry Marks(Item item)
    {
        var marks = new[]
        {
            Mark("maker", item.Maker), Mark("model", item.Model), Mark("part number", item.PartNumber),
            Mark("serial", item.Serial), Mark("owner's mark", item.OwnersMark),
        }.OfType<string>().ToList();
        return item.Serial is null && item.OwnersMark is null
            ? Entry(Bearing.Open, string.Join(", ", marks.Append("neither a serial nor an owner's mark to tell it by")))
            : Entry(Bearing.For, string.Join(", ", marks));
    }

    private static string? Mark(string what, string? value) => value is null ? null : $"{what} {value}";

    private static IEnumerable<LedgerEntry> Permitted(ItemCase item, ItemCase whole)
    {
        var lists = whole.Limits.All.Where(l => l.Row.PermittedParts is not null).ToList();
        if (lists.Count == 0)
            return [Entry(Bearing.Neutral, $"fitted to {Say.Name(whole)}, for which no list of permitted parts is recorded")];
        return lists.Where(l => l.Row.Permits(item.Item.PartNumber) is true)
            .Select(l => new LedgerEntry(Heading.Identity, Bearing.For,
                $"part number {item.Item.PartNumber} is among the parts permitted on {Say.Name(whole)}", LimitsSourceText.Of(l.Row)));
    }

    private static LedgerEntry Entry(Bearing bearing, string text) => new(Heading.Identity, bearing, text, Ledger.TheRecord);
}
