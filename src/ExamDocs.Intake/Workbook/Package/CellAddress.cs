namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Cell addresses such as AF12.</summary>
internal static class CellAddress
{
    /// <summary>Letters of a column counted from 1.</summary>
    public static string Letters(int column)
    {
        var letters = "";
        for (var rest = column; rest > 0; rest = (rest - 1) / 26)
            letters = (char)('A' + ((rest - 1) % 26)) + letters;
        return letters;
    }

    /// <summary>Column, counted from 1, of an address; null where it does not begin with a column.</summary>
    public static int? Column(string address)
    {
        var column = 0;
        foreach (var letter in address)
        {
            if (!char.IsAsciiLetter(letter))
                break;
            column = (column * 26) + (char.ToUpperInvariant(letter) - 'A' + 1);
            if (column > WorkbookLimits.LastColumn)
                return null;
        }
        return column > 0 ? column : null;
    }
}
