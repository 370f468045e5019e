using ExamDocs.Templates.Shared;
using NodaTime;

namespace ExamDocs.Templates.DuePlan;

/// <summary>Turns days into places on a timeline of months; plot units are tenths of a millimetre.</summary>
/// <param name="from">The first day.</param>
/// <param name="to">The last day.</param>
internal sealed class TimelineScale(LocalDate from, LocalDate to)
{
    public const int WidthMm = 180;
    public const double Width = WidthMm * PlotLengths.PerMm;

    /// <summary>Room for the name of a category.</summary>
    public const double Left = 600;
    public const double Right = Width - 10;
    public const double NamesEnd = Left - 16;

    /// <summary>Of the lines with the years and the names of the months.</summary>
    public const double YearLine = 22;
    public const double MonthLine = 50;
    public const double Top = 62;
    public const double RowHeight = 46;

    /// <summary>From the top of a row to the foot of its figures, and to its line.</summary>
    public const double FigureLine = 25;
    public const double DayLine = 38;
    public const double TickHalf = 6;
    public const double DiamondHalf = 9;

    /// <summary>More columns than this have no room for a month's name in each.</summary>
    private const int MostNames = 13;

    /// <summary>The name of a category has room for so many letters; the tables have it whole.</summary>
    public const int MostLetters = 36;

    private readonly YearMonth _first = from.ToYearMonth();

    /// <summary>Every month from the first to the last.</summary>
    public IReadOnlyList<YearMonth> Months { get; } =
    [
        .. Enumerable
            .Range(0, Period.Between(Start(from), Start(to), PeriodUnits.Months).Months + 1)
            .Select(n => Start(from).PlusMonths(n).ToYearMonth()),
    ];

    /// <summary>The name of every so-many-th month is written.</summary>
    public int NameEvery => (Months.Count + MostNames - 1) / MostNames;

    public static double Height(int rows) => Top + (rows * RowHeight) + 4;

    /// <summary>Where a month begins.</summary>
    public double X(YearMonth month) => Left + (Index(month) * ColumnWidth);

    public double Middle(YearMonth month) => X(month) + (ColumnWidth / 2);

    public double X(LocalDate day) =>
        X(day.ToYearMonth()) + ((day.Day - 0.5) / CalendarSystem.Iso.GetDaysInMonth(day.Year, day.Month) * ColumnWidth);

    private double ColumnWidth => (Right - Left) / Months.Count;

    private int Index(YearMonth month) => ((month.Year - _first.Year) * 12) + month.Month - _first.Month;

    private static LocalDate Start(LocalDate day) => new(day.Year, day.Month, 1);
}
