using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Reading;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Csv;

/// <summary>One file of separated values.</summary>
/// <param name="Name">Its name without a folder: it tells which sheet it stands for, and findings give it.</param>
/// <param name="Bytes">What it holds.</param>
public sealed record CsvFile(string Name, byte[] Bytes);

/// <summary>A file of the folder that is not read.</summary>
/// <param name="Name">Its path below the folder.</param>
/// <param name="MayHoldRecord">Whether it is of a kind that records are kept in.</param>
public sealed record UnreadFile(string Name, bool MayHoldRecord);

/// <summary>
/// Reads a record from files of separated values, each a sheet of the capture workbook: the same data as in a workbook
/// give the same record.
/// </summary>
public static class CsvRecordReader
{
    /// <summary>Bytes of all files together, inclusive; no recorded visit is longer.</summary>
    public const int MostBytes = WorkbookLimits.FileBytes;

    private const int MostNamed = 100;

    /// <param name="files">In any order.</param>
    /// <param name="folder">The folder they are in, as the user gave it; empty for the current one.</param>
    /// <param name="rules">The categories there may be sheets of; left out, those built in.</param>
    /// <param name="unread">What else is in the folder.</param>
    /// <returns>Never throws for what the files hold.</returns>
    public static ReadResult Read(
        IReadOnlyList<CsvFile> files,
        string folder,
        KnownRules? rules = null,
        IReadOnlyList<UnreadFile>? unread = null
    ) => Read(files, folder, rules ?? KnownRules.BuiltIn, new ReadingBudget(), unread);

    internal static ReadResult Read(
        IReadOnlyList<CsvFile> files,
        string folder,
        KnownRules rules,
        ReadingBudget budget,
        IReadOnlyList<UnreadFile>? unread = null
    )
    {
        var notes = new ReadingNotes();
        try
        {
            ReportUnread(unread ?? [], notes);
            var root = ReadSheets(files, rules, budget, notes);
            var (record, findings) = RecordBinder.Bind(root);
            var sources = SourceMap.ForFolder(folder, notes.Cells, notes.HeadingOf);
            return new ReadResult(record, [.. notes.Findings, .. findings], sources, null)
            {
                UnreadRows = [.. notes.UnreadRows.Select(r => sources.OfCell(r.Sheet, FormattableString.Invariant($"A{r.Row}")))],
            };
        }
        catch (UnreadableWorkbookException e)
        {
            return new ReadResult(null, [], SourceMap.ForFolder(folder, notes.Cells), e.Message) { HasNoKnownSheet = e.HasNoKnownSheet };
        }
    }

    /// <summary>Each that may hold a record, so that nothing comes out fit on half of what was recorded; the others together.</summary>
    private static void ReportUnread(IReadOnlyList<UnreadFile> unread, ReadingNotes notes)
    {
        foreach (var file in unread.Where(f => f.MayHoldRecord).Take(MostNamed))
            notes.Report(
                CsvFindings.FileNotRead,
                ReadingNotes.Outside(file.Name),
                file.Name,
                $"{CellReading.Shown(file.Name)} is in the folder and was not read"
            );
        if (unread.FirstOrDefault(f => !f.MayHoldRecord) is { } first)
            notes.Report(
                CsvFindings.OthersNotRead,
                ReadingNotes.Outside(first.Name),
                first.Name,
                $"{unread.Count(f => !f.MayHoldRecord)} other files in the folder are not read; "
                    + $"the first is {CellReading.Shown(first.Name)}"
            );
    }

    private static ObjectNode ReadSheets(IReadOnlyList<CsvFile> files, KnownRules rules, ReadingBudget budget, ReadingNotes notes)
    {
        if (files.Sum(f => (long)f.Bytes.Length) > MostBytes)
            throw new UnreadableWorkbookException("The files are larger than 32 MiB together, which no recorded visit is.");
        var reading = new SheetReading(notes, counts1904: false, rules);
        var sheets = files.Select(f => Sheet(f, rules, budget, notes)).OfType<CsvSheet>().ToList();
        if (sheets.Exists(s => !s.IsOurs) && sheets.TrueForAll(s => s.Shape is null))
            throw NoCaptureWorkbook.Refused(
                sheets.Select(s => s.Name),
                [.. sheets.SelectMany(s => s.Rows.Select(r => (s.Name, r.Number)))],
                "these are not the sheets of a capture workbook: neither the names nor the headings of the files are known"
            );
        foreach (var sheet in sheets.OrderBy(s => s.Shape?.Role))
        {
            if (sheet.Shape is { } shape)
                reading.Read(new SheetEntry(sheet.Name, sheet.Name, Hidden: false), shape, sheet.Rows, SheetBeside.Nothing);
            else if (sheet.UnreadValue is var (address, text))
                notes.Report(
                    BesideFindings.HelperAltered,
                    ReadingNotes.Outside(sheet.Name, address),
                    $"{sheet.Name}!{address}",
                    $"'{CellReading.Shown(text)}' is not what the program writes there"
                );
            else if (!sheet.IsOurs)
                ReportUnknown(sheet, notes);
        }
        return reading.Finish();
    }

    private static void ReportUnknown(CsvSheet sheet, ReadingNotes notes)
    {
        notes.Report(
            CsvFindings.UnknownFile,
            ReadingNotes.Outside(sheet.Name),
            $"{sheet.Name}!A1",
            $"neither the name of the file {sheet.Name} nor its headings tell which sheet it is"
        );
        notes.UnreadRows.AddRange(sheet.Rows.Select(r => (sheet.Name, r.Number)));
    }

    /// <summary>Null for a file with nothing in it.</summary>
    private static CsvSheet? Sheet(CsvFile file, KnownRules rules, ReadingBudget budget, ReadingNotes notes)
    {
        try
        {
            return Read(file, rules, budget, notes);
        }
        catch (UnreadableWorkbookException e)
        {
            throw new UnreadableWorkbookException($"{file.Name}: {e.Message}");
        }
    }

    private static CsvSheet? Read(CsvFile file, KnownRules rules, ReadingBudget budget, ReadingNotes notes)
    {
        var text = CsvText.Of(file.Bytes);
        var (separator, separated) = CsvRows.SeparatorOf(text.Text);
        List<SheetRow> rows = [.. CsvRows.Read(text.Text, separator, budget)];
        if (rows.Count == 0)
            return null;
        notes.Report(
            CsvFindings.ReadAs,
            ReadingNotes.Outside(file.Name, "A1"),
            $"{file.Name}!A1",
            $"{file.Name} was read as {text.Encoding}, its values separated by {separated}"
        );
        var named = CsvSheetName.Find(file.Name, rules);
        if (named is { Role: not SheetRole.Guide })
            return new CsvSheet(file.Name, named, rows);
        var unread = named is null ? null : HelperSheets.UnreadValueOn(named, rows, rules);
        var isOurs = named is not null && unread is null;
        return new CsvSheet(file.Name, isOurs ? null : HeadingRow.ShapeOf(rows, rules), rows) { IsOurs = isOurs, UnreadValue = unread };
    }

    /// <param name="Name">The file's name.</param>
    /// <param name="Shape">What it is read as; null where it is not read.</param>
    /// <param name="Rows">Its filled rows.</param>
    private sealed record CsvSheet(string Name, SheetShape? Shape, IReadOnlyList<SheetRow> Rows)
    {
        /// <summary>It holds what the program writes to be looked at, and nothing besides.</summary>
        public bool IsOurs { get; init; }

        /// <summary>What was typed among that.</summary>
        public (string Address, string Text)? UnreadValue { get; init; }
    }
}
