using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences.Messages;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Workbook;

/// <summary>What a sheet unknown to the capture workbook turned out to be.</summary>
internal enum UnknownSheetKind
{
    /// <summary>Nothing stands on it.</summary>
    Empty,

    /// <summary>A list of findings that we wrote, and nothing besides.</summary>
    Findings,

    /// <summary>Something that will not be read.</summary>
    Other,
}

/// <summary>The fixed words of the list of findings, by which it is known again.</summary>
internal static class FindingsSheet
{
    public static Message Name => $"Findings";

    public static Message Caution =>
        $"Maker's instructions, local law and the competent person's judgement come first. This list was written by ExamDocs and is "
        + $"not read again. In this copy, formulas are replaced by their results.";

    public static Message None => $"No findings.";

    public const int HeadingRow = 2;

    private const string EarlierCaution =
        "Maker's instructions, local law and the competent person's judgement come first. "
        + "This list was written by ExamDocs; it is not read again. In this copy, results stand in the place of formulas.";

    public static IReadOnlyList<Message> Headings { get; } =
    [$"Code", $"Severity", $"Sheet and cell", $"Item", $"What is wrong", $"What to type or do", $"Check"];

    /// <summary>The fixed words in every language, and those of earlier versions: a copy that lies about is known again.</summary>
    private static IReadOnlyList<(string Caution, string None, IReadOnlyList<string> Headings)> Known { get; } =
    [
        .. TranslatedMessages.AndEnglish.Select(l =>
            (Caution.In(l), None.In(l), (IReadOnlyList<string>)[.. Headings.Select(h => h.In(l))])
        ),
        (EarlierCaution, None.Text, [.. Headings.Select(h => h.Text)]),
    ];

    /// <summary>
    /// Ours are recognised by what stands on them, not by their name: the caution, the headings, and below them rows
    /// whose last cell is the sum of the others. Anything else on it makes it a sheet of the user's, on which an answer
    /// may stand.
    /// </summary>
    public static UnknownSheetKind KindOf(IEnumerable<SheetRow> rows)
    {
        var (any, last) = (false, 0);
        foreach (var row in rows)
        {
            any = true;
            if (!IsOurs(row, last))
                return UnknownSheetKind.Other;
            last = row.Number;
        }
        return !any ? UnknownSheetKind.Empty
            : last >= HeadingRow ? UnknownSheetKind.Findings
            : UnknownSheetKind.Other;
    }

    private static bool IsOurs(SheetRow row, int last)
    {
        var texts = row.Cells.Select(c => c.Kind is CellKind.Text && !c.IsFormula ? c.Raw : null).ToList();
        if (texts.Contains(null) || row.Cells[0].Column != 1 || row.Cells[^1].Column > Headings.Count)
            return false;
        return row.Number switch
        {
            1 => texts is [{ } only] && Known.Any(k => string.Equals(k.Caution, only, StringComparison.Ordinal)),
            HeadingRow => last == 1 && Known.Any(k => texts.SequenceEqual(k.Headings, StringComparer.Ordinal)),
            _ => last >= HeadingRow
                && ((texts is [{ } only] && Known.Any(k => string.Equals(k.None, only, StringComparison.Ordinal))) || IsChecked(row)),
        };
    }

    /// <summary>The sum of a row's cells, of which the empty ones count too.</summary>
    public static string Check(IEnumerable<string> cells) => Seal.Of(string.Join('|', cells));

    private static bool IsChecked(SheetRow row)
    {
        var cells = new string[Headings.Count - 1];
        Array.Fill(cells, "");
        foreach (var cell in row.Cells)
        {
            if (cell.Column < Headings.Count)
                cells[cell.Column - 1] = cell.Raw;
        }
        return row.Cells[^1] is { } last
            && last.Column == Headings.Count
            && string.Equals(last.Raw, Check(cells), StringComparison.Ordinal);
    }
}
