using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Tells what each sheet of a workbook is: by its name, or failing that by its headings. One that is not read is passed
/// over only where nothing stands on it but what the program writes there.
/// </summary>
internal sealed class WorkbookSheets(WorkbookPackage package, SheetRows rows, ReadingBudget budget, ReadingNotes notes, KnownRules rules)
{
    /// <summary>Null where the sheet is not to be read; what was wrong with it is then reported.</summary>
    public SheetShape? ShapeOf(SheetEntry sheet)
    {
        var named = WorkbookShape.Find(sheet.Name, rules);
        if (named is { Role: not SheetRole.Guide })
            return named;
        var unread = named is null ? null : UnreadValueOn(sheet, named);
        if (named is not null && unread is null)
            return NotRead(sheet);
        if (ByHeadings(sheet) is { } shape)
        {
            notes.Report(
                SheetFindings.KnownByHeadings,
                ReadingNotes.Outside(sheet.Name),
                $"{sheet.Name}!A1",
                $"the sheet '{CellReading.Shown(sheet.Name)}' is read as {shape.Name}"
            );
            return shape;
        }
        if (unread is var (address, text))
            notes.Report(
                BesideFindings.HelperAltered,
                ReadingNotes.Outside(sheet.Name, address),
                $"{sheet.Name}!{address}",
                $"'{CellReading.Shown(text)}' is not what the program writes there"
            );
        else
            ReportUnknown(sheet);
        return NotRead(sheet);
    }

    /// <summary>What the file holds of a sheet beside its rows, which are read next.</summary>
    public SheetBeside Beside(SheetEntry sheet, bool linksOthers) =>
        new(SheetComments.Of(package, sheet.Part, budget), SheetDrawings.Of(package, sheet.Part, budget), () =>
        {
            rows.About.LinksOtherWorkbooks = linksOthers;
            return rows.About;
        });

    private (string Address, string Text)? UnreadValueOn(SheetEntry sheet, SheetShape helper)
    {
        using var part = package.Read(sheet.Part);
        return HelperSheets.UnreadValueOn(helper, [.. rows.Read(part)], rules);
    }

    private SheetShape? ByHeadings(SheetEntry sheet)
    {
        using var part = package.Read(sheet.Part);
        return HeadingRow.ShapeOf(rows.Read(part), rules);
    }

    /// <summary>A list of findings that we wrote into a copy of the workbook holds nothing of the record.</summary>
    private void ReportUnknown(SheetEntry sheet)
    {
        using (var part = package.Read(sheet.Part))
        {
            if (FindingsSheet.KindOf(rows.Read(part)) is not UnknownSheetKind.Other)
                return;
        }
        notes.Report(
            SheetFindings.UnknownSheet,
            ReadingNotes.Outside(sheet.Name),
            $"{sheet.Name}!A1",
            $"the sheet '{CellReading.Shown(sheet.Name)}' is not a known sheet, but something is typed on it"
        );
        using var again = package.Read(sheet.Part);
        foreach (var row in rows.Read(again))
            notes.UnreadRows.Add((sheet.Name, row.Number));
    }

    /// <summary>What lies over a sheet, and comments on it, are looked at even where its cells are not read.</summary>
    private SheetShape? NotRead(SheetEntry sheet)
    {
        var beside = Beside(sheet, linksOthers: false);
        new CellMarks(sheet, notes, beside).Finish(new SheetAbout());
        new SheetRemarks(sheet, notes, shape: null).ReportBeside(new SheetAbout(), beside.Drawings);
        return null;
    }
}
