using ClosedXML.Excel;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook.Shape;
using ExamDocs.Intake.Workbook.Writing;

namespace ExamDocs.Intake.Workbook;

/// <summary>Writes a workbook to record a visit in, empty or filled in; <see cref="WorkbookReader"/> reads it back.</summary>
public static class CaptureWorkbook
{
    /// <summary>Six readings are more than anybody takes at one place; more columns are made where a record has more.</summary>
    private const int Readings = 6;

    /// <summary>The format wants a date of making; a fixed one keeps equal content equal, whenever it is written.</summary>
    private static readonly DateTime Made = new(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <param name="output">Where the workbook is written; it is left open.</param>
    /// <param name="categories">Which item sheets to make; those that the record's items need are made in any case.</param>
    /// <param name="record">What to fill in; null for empty sheets.</param>
    /// <param name="forNextVisit">
    /// Fill in what still holds at the next visit: parties, people, items, limits; what was examined, renewed and released
    /// stands as history, so that an open withdrawal stays open. The day an item was examined becomes its last examination, and
    /// what was seen then is shown beside the answer to give.
    /// </param>
    /// <param name="rules">The categories there are; left out, those built in.</param>
    /// <param name="firms">Employers and places of earlier visits, to be chosen from.</param>
    public static void Write(
        Stream output,
        IReadOnlyList<Category> categories,
        ExaminationRecord? record,
        bool forNextVisit,
        KnownRules? rules = null,
        IReadOnlyList<Party>? firms = null
    )
    {
        rules ??= KnownRules.BuiltIn;
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(categories);
        var content = forNextVisit && record is not null ? NextVisit.Of(record) : record ?? new ExaminationRecord();
        var items = ItemSheets(categories, content, rules, lastTime: forNextVisit && record is not null);
        var rows = new CaptureRows(content, items, historyOnly: forNextVisit, rules);
        items = [.. items.Select(sheet => AnswerWithNote.Ordered(sheet, rows.NotesApart(sheet)))];
        var after = WorkbookShape.AfterItems(Math.Max(Readings, rows.MostReadings));
        using var workbook = new XLWorkbook();
        (workbook.Properties.Author, workbook.Properties.Created, workbook.Properties.Modified) = ("ExamDocs", Made, Made);
        var isPeopleSheet = content.People.Count > VisitForm.MostPeople;
        SheetShape[] sheets = [.. isPeopleSheet ? [IdentitySheets.People] : (SheetShape[])[], LimitsSheet.Shape, .. items, .. after];
        GuideSheet.Write(workbook, sheets.Prepend(VisitSheet.Shape));
        var dropDowns = new DropDowns(workbook);
        var visit = new VisitForm(workbook, dropDowns);
        visit.Write(rows.Visit(), isPeopleSheet ? null : [.. rows.People()]);
        var writing = new SheetWriting(workbook, dropDowns);
        var lastRows = sheets.Select(sheet => writing.Write(sheet, rows.Of(sheet))).ToList();
        var ids = new OfferedIds(workbook, visit, items, firms ?? [], rules, dropDowns);
        ids.OfferOnVisit();
        foreach (var (sheet, last) in sheets.Zip(lastRows))
            ids.Offer(sheet, last);
        using var whole = new MemoryStream();
        workbook.SaveAs(whole);
        PrintTitles.Fix(whole);
        whole.WriteTo(output);
    }

    private static List<SheetShape> ItemSheets(
        IReadOnlyList<Category> categories,
        ExaminationRecord record,
        KnownRules rules,
        bool lastTime
    )
    {
        var used = record.Items.Select(i => i.Category).ToHashSet(StringComparer.Ordinal);
        var chosen = categories.Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        var sheets = rules
            .Categories.Where(c => chosen.Contains(c.Id) || used.Contains(c.Id))
            .Select(c => WorkbookShape.Items(c, lastTime))
            .ToList();
        if (used.Any(id => rules.FindCategory(id) is null))
            sheets.Add(WorkbookShape.OtherItems);
        return sheets;
    }
}
