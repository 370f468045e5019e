using System.Runtime.InteropServices;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>A byte wide, because every cell has one.</summary>
internal enum FormatKind : byte
{
    Plain,
    Date,
    DateAndTime,
    Time,
    Duration,

    /// <summary>Shown a hundredfold, with a per cent sign.</summary>
    Percent,

    /// <summary>Noughts alone, which shows a number with leading zeros.</summary>
    Zeros,
}

/// <summary>What a cell's number format makes of a number.</summary>
/// <param name="Zeros">Digits shown at least, for <see cref="FormatKind.Zeros"/>.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct NumberFormat(FormatKind Kind, byte Zeros = 0)
{
    /// <summary>
    /// Formats that the file format numbers instead of spelling out: ECMA-376 1st ed. Part 4, 3.8.30 (numFmt), the
    /// East Asian ones included.
    /// </summary>
    public static NumberFormat BuiltIn(int id) =>
        id switch
        {
            >= 14 and <= 17 or >= 27 and <= 31 or 36 or >= 50 and <= 54 or 57 or 58 => new(FormatKind.Date),
            22 => new(FormatKind.DateAndTime),
            >= 18 and <= 21 or 45 or 47 or >= 32 and <= 35 or 55 or 56 => new(FormatKind.Time),
            46 => new(FormatKind.Duration),
            9 or 10 => new(FormatKind.Percent),
            _ => new(FormatKind.Plain),
        };

    public static NumberFormat Of(string code)
    {
        if (code.Length is > 1 and <= 30 && code.AsSpan().IndexOfAnyExcept('0') < 0)
            return new(FormatKind.Zeros, (byte)code.Length);
        var letters = FormatLetters.In(code);
        if (letters.Elapsed)
            return new(FormatKind.Duration);
        var time = letters.Has('h') || letters.Has('s');
        var date = letters.Has('y') || letters.Has('d') || letters.Has('e') || letters.Has('g') || (letters.Has('m') && !time);
        return (date, time) switch
        {
            (true, true) => new(FormatKind.DateAndTime),
            (true, false) => new(FormatKind.Date),
            (false, true) => new(FormatKind.Time),
            _ => new(letters.Has('%') ? FormatKind.Percent : FormatKind.Plain),
        };
    }
}
