using System.Globalization;

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

    /// <summary>Row and column, both counted from 1, of an address such as AF12; null where it is not an address.</summary>
    public static (int Row, int Column)? Parse(string address)
    {
        var letters = address.AsSpan().IndexOfAnyExceptInRange('A', 'Z');
        return
            letters > 0
            && Column(address) is { } column
            && int.TryParse(address.AsSpan(letters), NumberStyles.None, CultureInfo.InvariantCulture, out var row)
            && row is > 0 and <= WorkbookLimits.LastRow
            ? (row, column)
            : null;
    }

    /// <summary>The address of a row and column, both counted from 1.</summary>
    public static string Of(int row, int column) => string.Create(CultureInfo.InvariantCulture, $"{Letters(column)}{row}");
}
