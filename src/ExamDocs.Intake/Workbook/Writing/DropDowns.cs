using ClosedXML.Excel;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Offers the allowed words in a list, and stops others while typing; reading checks again in any case.</summary>
internal sealed class DropDowns(XLWorkbook workbook)
{
    /// <summary>A list spelt out in the sheet may have no more characters; longer ones go to a hidden sheet.</summary>
    public const int LongestLiteral = 255;

    /// <summary>Nobody looks through a longer list.</summary>
    private const int MostKnown = 500;

    private readonly Dictionary<string, IXLRange> _lists = new(StringComparer.Ordinal);

    private int _wordLists;

    /// <param name="cells">Where they are offered.</param>
    /// <param name="words">In the order in which they are listed.</param>
    /// <param name="isOnly">Nothing else may be typed; otherwise a note may follow the word.</param>
    public void Offer(IXLRange cells, IReadOnlyList<string> words, bool isOnly = true)
    {
        var literal = string.Join(',', words);
        var validation = cells.SetDataValidation();
        validation.IgnoreBlanks = true;
        validation.ShowErrorMessage = isOnly;
        validation.ErrorStyle = XLErrorStyle.Stop;
        validation.ErrorTitle = "Not one of the words";
        validation.ErrorMessage = "Choose one of the words in the list.";
        if (literal.Length <= LongestLiteral)
            validation.List($"\"{literal}\"", true);
        else
            validation.List(OnWordsSheet(words), true);
    }

    /// <summary>Offers what stands in other cells, and lets anything else be typed.</summary>
    public static void Offer(IXLRange cells, IXLRange ids)
    {
        var validation = cells.SetDataValidation();
        validation.IgnoreBlanks = true;
        validation.ShowErrorMessage = false;
        validation.List(ids, true);
    }

    /// <summary>Offers what is known when the workbook is written, and lets anything else be typed.</summary>
    /// <param name="cells">Where it is offered.</param>
    /// <param name="heading">What it is: the reader knows the list by it.</param>
    /// <param name="known">What is offered; a text that the reader could take for an answer is left to be typed.</param>
    public void OfferKnown(IXLRange cells, string heading, IEnumerable<string?> known)
    {
        var texts = known.OfType<string>().Where(t => !AnswerWords.IsIn(t)).Distinct(StringComparer.Ordinal).Take(MostKnown).ToList();
        if (texts.Count == 0)
            return;
        var list = OnWordsSheet([heading, .. texts]);
        var column = list.FirstColumn().ColumnNumber();
        Offer(cells, list.Worksheet.Range(2, column, texts.Count + 1, column));
    }

    private IXLRange OnWordsSheet(IReadOnlyList<string> words)
    {
        var key = string.Join('\n', words);
        if (_lists.TryGetValue(key, out var there))
            return there;
        if (!workbook.TryGetWorksheet(WorkbookShape.WordsName, out var sheet))
        {
            sheet = workbook.AddWorksheet(WorkbookShape.WordsName);
            sheet.Hide();
        }
        _wordLists++;
        for (var n = 0; n < words.Count; n++)
            CellWriting.WriteText(sheet.Cell(n + 1, _wordLists), words[n]);
        return _lists[key] = sheet.Range(1, _wordLists, words.Count, _wordLists);
    }
}
