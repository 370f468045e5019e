using ClosedXML.Excel;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>
/// Offers in a list what stands on other sheets, or is known from the rules: people, items, criteria, regimes. Anything else may be
/// typed all the same, and is checked when it is read.
/// </summary>
internal sealed class OfferedIds(
    XLWorkbook workbook,
    VisitForm visit,
    IReadOnlyList<SheetShape> items,
    IReadOnlyList<Party> firms,
    KnownRules rules,
    DropDowns dropDowns
)
{
    /// <param name="shape">A sheet that is written, with its columns in their order.</param>
    /// <param name="lastRow">The last row that has a list.</param>
    public void Offer(SheetShape shape, int lastRow)
    {
        var sheet = workbook.Worksheet(shape.Name);
        for (var n = 0; n < shape.Columns.Count; n++)
            Offer(sheet.Range(2, n + 1, lastRow, n + 1), shape.Columns[n].Offers);
    }

    public void OfferOnVisit()
    {
        foreach (var column in VisitSheet.Shape.Columns)
            Offer(visit.ValueOf(column), column.Offers);
    }

    private void Offer(IXLRange cells, ColumnOffer offer)
    {
        switch (offer)
        {
            case ColumnOffer.People:
                DropDowns.Offer(cells, visit.PeopleIds ?? Ids(IdentitySheets.People));
                break;
            case ColumnOffer.Items when items.Count == 1:
                DropDowns.Offer(cells, Ids(items[0]));
                break;
            // A list cannot be taken from several sheets: what is known when the workbook is written is copied to one.
            case ColumnOffer.Items:
                dropDowns.OfferKnown(cells, WorkbookShape.ItemIdsHeading, KnownIds);
                break;
            case ColumnOffer.Firms:
                dropDowns.OfferKnown(cells, WorkbookShape.FirmsHeading, firms.Select(f => f.Name));
                break;
            case ColumnOffer.Addresses:
                dropDowns.OfferKnown(cells, WorkbookShape.AddressesHeading, firms.Select(f => f.Address));
                break;
            case ColumnOffer.Criteria when Criteria.Count > 0:
                dropDowns.Offer(cells, Criteria, isOnly: false);
                break;
            case ColumnOffer.Regimes:
                dropDowns.Offer(cells, [.. rules.Regimes.Select(r => r.Id)], isOnly: false);
                break;
        }
    }

    private IReadOnlyList<string> Criteria =>
        field ??= [
            .. items
                .SelectMany(s => s.Category?.Criteria ?? [])
                .Select(c => c.Id)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    private IReadOnlyList<string> KnownIds => field ??= [.. items.SelectMany(s => Ids(s).CellsUsed().Select(c => c.GetString()))];

    private IXLRange Ids(SheetShape shape)
    {
        var column = shape.Columns.ToList().FindIndex(c => c.Path is "id") + 1;
        return workbook.Worksheet(shape.Name).Range(2, column, SheetWriting.RowsToSpare, column);
    }
}
