using System.Globalization;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Reading;

namespace ExamDocs.Intake.Workbook;

/// <summary>What is said of a workbook, or of a folder of files, of which no sheet is one that the program knows.</summary>
internal static class NoCaptureWorkbook
{
    private const int Named = 5;

    private const string WhatToDo =
        "Nothing in it was read. Make one with 'examdocs blank --out visit.xlsx' and fill it in, or give sheets and headings the names "
        + "that they have there.";

    /// <param name="sheets">Names of all its sheets, or of the files that stand for sheets.</param>
    /// <param name="rows">Every row that something stands on.</param>
    /// <param name="what">What was given.</param>
    public static UnreadableWorkbookException Refused(
        IEnumerable<string> sheets,
        IReadOnlyList<(string Sheet, int Row)> rows,
        string what = "this is not a capture workbook: neither the names nor the headings of its sheets are known"
    )
    {
        var filled = rows.CountBy(r => r.Sheet, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        var names = sheets.Select(name => $"'{CellReading.Shown(name)}' ({Count(filled.GetValueOrDefault(name))})").ToList();
        return new UnreadableWorkbookException($"{what}: {List(names)}. {WhatToDo}") { HasNoKnownSheet = true };
    }

    private static string Count(int rows) => rows == 1 ? "1 row" : string.Create(CultureInfo.InvariantCulture, $"{rows} rows");

    private static string List(List<string> names) =>
        names.Count <= Named
            ? string.Join(", ", names)
            : string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", names.Take(Named))} and {names.Count - Named} more");
}
