using System.Globalization;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;
using ExamDocs.Intake.Workbook.Writing;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Finds what somebody typed on a sheet that the program writes to be looked at, and does not read: whatever it would not
/// have written there itself.
/// </summary>
internal static class HelperSheets
{
    /// <summary>Address and text of the first such cell; null where there is none.</summary>
    public static (string Address, string Text)? UnreadValueOn(SheetShape helper, IReadOnlyList<SheetRow> rows, KnownRules rules) =>
        helper.Name is WorkbookShape.WordsName ? StrayWord(rows, rules) : StrayLine(rows, rules);

    private static (string, string)? StrayLine(IReadOnlyList<SheetRow> rows, KnownRules rules)
    {
        var lines = GuideSheet.GuideLines(WorkbookShape.For(rules)).Concat(GuideSheet.EarlierGuideLines).ToHashSet();
        var numbered = lines.Where(l => char.IsAsciiDigit(l.First[0])).Select(l => l.Second).ToHashSet(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            var (first, second) = (At(row, 1), At(row, 2));
            var isNumber = first.Length > 0 && first.All(char.IsAsciiDigit);
            var known =
                lines.Contains((first, second))
                || (second.Length == 0 && first is WorkbookShape.GuideName)
                || (isNumber && numbered.Contains(second));
            var isFirstKnown = isNumber || lines.Any(l => string.Equals(l.First, first, StringComparison.Ordinal));
            foreach (var cell in row.Cells)
            {
                if (cell.Column > 2 || (!known && !(isFirstKnown && cell.Column == 1 && second.Length > 0)))
                    return UnreadValue(row, cell);
            }
        }
        return null;
    }

    /// <summary>
    /// Each column holds one of the longer lists of words, whole and in its order, names of criteria or regimes, or under its heading what
    /// is known of items and firms.
    /// </summary>
    private static (string, string)? StrayWord(IReadOnlyList<SheetRow> rows, KnownRules rules)
    {
        var lists = WorkbookShape
            .For(rules)
            .SelectMany(s => s.Columns)
            .Select(c => c.Words)
            .Where(w => string.Join(',', w).Length > DropDowns.LongestLiteral)
            .ToList();
        var criteria = rules
            .Categories.SelectMany(c => c.Criteria)
            .Select(c => c.Id)
            .Concat(rules.Regimes.Select(r => r.Id))
            .ToHashSet(StringComparer.Ordinal);
        foreach (var column in rows.SelectMany(r => r.Cells.Select(c => (Row: r, Cell: c))).GroupBy(c => c.Cell.Column))
        {
            var words = column.Select(c => c.Cell.Raw).ToList();
            if (
                words is [WorkbookShape.ItemIdsHeading or WorkbookShape.FirmsHeading or WorkbookShape.AddressesHeading, ..]
                && !words.Exists(AnswerWords.IsIn)
            )
                continue;
            if (!words.TrueForAll(criteria.Contains) && !lists.Exists(l => l.SequenceEqual(words, StringComparer.Ordinal)))
                return UnreadValue(column.First().Row, column.First().Cell);
        }
        return null;
    }

    private static (string, string) UnreadValue(SheetRow row, Cell cell) =>
        (string.Create(CultureInfo.InvariantCulture, $"{CellAddress.Letters(cell.Column)}{row.Number}"), cell.Raw);

    private static string At(SheetRow row, int column)
    {
        foreach (var cell in row.Cells)
        {
            if (cell.Column == column)
                return cell.Raw;
        }
        return "";
    }
}
