using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>What is recorded about an item itself.</summary>
internal static class ItemColumns
{
    public static IReadOnlyList<Column> All { get; } =
    [
        Column.Id("id", "id", "The item's own name in this record; no other item has it.") with
        {
            IsNeeded = true,
            IsUsual = true,
            IsStarred = true,
        },
        Usual(Column.Identity("serial", "serial", "As marked on the item, every nought included.")) with
        {
            IsStarred = true,
        },
        Usual(Column.Identity("owner's mark", "ownersMark", "The mark its owner gave it.")),
        Column.Text("maker", "maker", "As marked on the item.") with
        {
            Names = true,
            IsUsual = true,
            IsStarred = true,
        },
        Column.Text("model", "model", "As marked on the item.") with
        {
            Names = true,
            IsUsual = true,
            IsStarred = true,
        },
        Usual(Column.Identity("part number", "partNumber", "As marked on the item.")),
        Usual(Column.PartialDate("manufactured", "manufactured", "As marked on the item.")),
        Usual(Column.PartialDate("first used", "firstUsed", "When it was first taken into use.")),
        Usual(Column.PartialDate("last examined", "lastExamined", "Its last thorough examination before this visit.")),
        Usual(Column.Word("purpose", "purpose", Words.Purposes.All, "What it is for; it sets the interval.")),
        Usual(Column.Id("fitted to", "fittedTo", "The id of the item that this one is a part of.") with { Offers = ColumnOffer.Items }),
        Column.Text("description", "description", "What it is, in words that tell it from the rest.", 28),
        Column.PartialDate("purchased", "purchased", "When it was bought."),
        Column.Flag("never used", "neverUsed", "yes where it has not been used yet."),
        Column.Number("cleanings", "cleanings", "How often it was cleaned so far; 0 where never."),
        Column.PartialDate("obsolete on", "obsoleteOn", "The last day of service, where one is marked."),
        Column.Number("safe working load", "safeWorkingLoad/value", "The number marked on the item."),
        Column.Word("safe working load unit", "safeWorkingLoad/unit", Words.LoadUnits, "The unit marked with it."),
        Column.Flag("safe working load not marked", "safeWorkingLoad/notMarked", "yes where the item bears none."),
        Column.Text("safe working load basis", "safeWorkingLoad/basis", "Where the load was taken from, if the item bears none."),
        Column.Number("marked strength", "markedStrength/value", "The number marked on the item."),
        Column.Word("marked strength unit", "markedStrength/unit", Words.LoadUnits, "The unit marked with it."),
        Column.Flag("marked strength not marked", "markedStrength/notMarked", "yes where the item bears none."),
        Column.Text("marked strength basis", "markedStrength/basis", "Where the strength was taken from, if the item bears none."),
        Column.List("standards", "standards", "Standards marked on it, for example EN 358."),
        Column.Word("status", "status", Words.Statuses.All, "Where the item was at the visit."),
        Column.Identity("declaration reference", "declaration/reference", "Reference of the maker's declaration of conformity."),
        Column.Date("declaration on", "declaration/on", "Date of the maker's declaration of conformity."),
        Column.Text("transfer evidence", "transferEvidence", "Evidence of its last examination, where it came from another undertaking."),
        Column.Id("formerly", "formerly", "The id under which an earlier record has this same item, where that was another."),
    ];

    private static Column Usual(Column column) => column with { IsUsual = true };
}
