using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Offers the allowed words in a list, and stops others while typing; reading checks again in any case.</summary>
internal sealed class DropDowns(XLWorkbook workbook)
{
    /// <summary>A list spelt out in the sheet may have no more characters; longer ones go to a hidden sheet.</summary>
    public const int LongestLiteral = 255;

    private int _wordLists;

    public void Offer(IXLRange cells, IReadOnlyList<string> words)
    {
        var literal = string.Join(',', words);
        var validation = cells.SetDataValidation();
        validation.IgnoreBlanks = true;
        validation.ErrorStyle = XLErrorStyle.Stop;
        validation.ErrorTitle = "Not one of the words";
        validation.ErrorMessage = "Choose one of the words in the list.";
        if (literal.Length <= LongestLiteral)
            validation.List($"\"{literal}\"", true);
        else
            validation.List(OnWordsSheet(words), true);
    }

    private IXLRange OnWordsSheet(IReadOnlyList<string> words)
    {
        if (!workbook.TryGetWorksheet(WorkbookShape.WordsName, out var sheet))
        {
            sheet = workbook.AddWorksheet(WorkbookShape.WordsName);
            sheet.Hide();
        }
        _wordLists++;
        for (var n = 0; n < words.Count; n++)
            sheet.Cell(n + 1, _wordLists).SetValue<string>(words[n]);
        return sheet.Range(1, _wordLists, words.Count, _wordLists);
    }
}
