using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>What distinguishes an item from others, folded once so that it can be compared with many.</summary>
internal sealed class Particulars
{
    /// <summary>The particulars that are compared, each by the name of its member in an item.</summary>
    public static readonly IReadOnlyList<(string Member, Func<Item, string?> Of)> Compared =
    [
        ("category", i => i.Category),
        ("maker", i => i.Maker),
        ("model", i => i.Model),
        ("partNumber", i => i.PartNumber),
        ("serial", i => i.Serial),
        ("ownersMark", i => i.OwnersMark),
        ("manufactured", i => i.Manufactured?.ToString()),
    ];

    private readonly PartialDate? _manufactured;

    public Particulars(Item item, string? owner)
    {
        (Id, Category, Maker, Model) = (Folded.Keys(item.Id), Folded.Keys(item.Category), MakerKeys(item.Maker), Folded.Keys(item.Model));
        (PartNumber, Serial, OwnersMark) = (Folded.Keys(item.PartNumber), SerialKeys.Of(item.Serial), Folded.Keys(item.OwnersMark));
        (Formerly, Owner, _manufactured) = (Folded.Keys(item.Formerly), FirmName.Fold(owner), item.Manufactured);
    }

    public IReadOnlyList<string> Id { get; }

    public IReadOnlyList<string> Category { get; }

    public IReadOnlyList<string> Maker { get; }

    public IReadOnlyList<string> Model { get; }

    public IReadOnlyList<string> PartNumber { get; }

    public IReadOnlyList<string> Serial { get; }

    public IReadOnlyList<string> OwnersMark { get; }

    public IReadOnlyList<string> Formerly { get; }

    /// <summary>The folded name of the owner; empty where none is given.</summary>
    public string Owner { get; }

    public bool SharesId(Particulars other) => Agree(Id, other.Id);

    /// <summary>True also where one of the owners is not given.</summary>
    public bool SharesOwner(Particulars other) =>
        Owner.Length == 0 || other.Owner.Length == 0 || string.Equals(Owner, other.Owner, StringComparison.Ordinal);

    /// <summary>True where both have the same serial number or the same owner's mark.</summary>
    public bool SharesMarking(Particulars other) => Agree(Serial, other.Serial) || Agree(OwnersMark, other.OwnersMark);

    public bool Contradicts(Particulars other) => ContradictsIn(other).Any();

    /// <summary>The members that both give and give differently, the strongest first.</summary>
    public IEnumerable<string> ContradictsIn(Particulars other)
    {
        if (Differ(Serial, other.Serial))
            yield return "serial";
        if (Differ(OwnersMark, other.OwnersMark))
            yield return "ownersMark";
        if (_manufactured is { } one && other._manufactured is { } two && (one.Latest < two.Earliest || two.Latest < one.Earliest))
            yield return "manufactured";
        if (Differ(PartNumber, other.PartNumber))
            yield return "partNumber";
        if (Differ(Maker, other.Maker))
            yield return "maker";
        if (Differ(Model, other.Model))
            yield return "model";
        if (Differ(Category, other.Category))
            yield return "category";
    }

    /// <summary>
    /// True where something differs that proves two items: serial number, owner's mark or date of manufacture; or maker, model or
    /// part number, unless the serial numbers agree.
    /// </summary>
    public bool IsMarkedOtherwise(Particulars other)
    {
        var differing = ContradictsIn(other).ToList();
        return differing.Exists(d => d is "serial" or "ownersMark" or "manufactured")
            || (differing.Exists(d => d is "maker" or "model" or "partNumber") && !Agree(Serial, other.Serial));
    }

    public static bool Agree(IReadOnlyList<string> one, IReadOnlyList<string> other)
    {
        foreach (var key in one)
        {
            foreach (var otherKey in other)
            {
                if (string.Equals(key, otherKey, StringComparison.Ordinal))
                    return true;
            }
        }
        return false;
    }

    /// <summary>
    /// True where both makers may be one: their names agree, or one is the other cut short ("Skarnhope" for "Skarnhope Ropes"). Good enough
    /// to ask, never to say that two items are one.
    /// </summary>
    public bool MakerMayBe(Particulars other) =>
        Maker.Any(a => other.Maker.Any(b => a.StartsWith(b, StringComparison.Ordinal) || b.StartsWith(a, StringComparison.Ordinal)));

    /// <summary>True where both are given and have no key in common.</summary>
    public static bool Differ(IReadOnlyList<string> one, IReadOnlyList<string> other) =>
        one.Count > 0 && other.Count > 0 && !Agree(one, other);

    /// <summary>A maker is a firm: its legal form makes no difference.</summary>
    private static string[] MakerKeys(string? maker) =>
        FirmName.Fold(maker) is { Length: > 0 } firm ? [.. Folded.Keys(maker), .. Folded.Keys(firm)] : [.. Folded.Keys(maker)];
}
