using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Report;

/// <summary>Items left out of a schedule because they cannot be printed whole; it names them as not reported.</summary>
/// <param name="Items">The items.</param>
/// <param name="AreNamed">False where an id among those not reported cannot be printed either: then all of them are named by their place in
/// the record.</param>
public sealed record LeftOutItems(IReadOnlyList<DeterminedItem> Items, bool AreNamed = true)
{
    public static LeftOutItems None { get; } = new([]);

    /// <summary>What a schedule calls an item that is not in it.</summary>
    public string Name(DeterminedVisit visit, DeterminedItem item) =>
        AreNamed
            ? Printed.Text(item.Item.Id)
            : string.Create(CultureInfo.InvariantCulture, $"#{visit.Items.TakeWhile(i => i != item).Count() + 1}");

    /// <summary>The description of an item that is not in it; none of one that cannot be printed whole.</summary>
    public string Description(DeterminedItem item) => AreNamed && !Items.Contains(item) ? Printed.Text(item.Item.Description) : "–";

    /// <summary>Its serial, or the owner's mark where it has none; neither of one that cannot be printed whole.</summary>
    public string Marking(DeterminedItem item) =>
        AreNamed && !Items.Contains(item) ? Printed.Text(item.Item.Serial ?? item.Item.OwnersMark) : "–";
}
