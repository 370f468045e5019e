using ExamDocs.Intake.Workbook.Tables;

namespace ExamDocs.UseCases.Teaching;

/// <summary>How the columns of the workbook are shown. Of groups that are too few to compare the numbers are shown, and no bar.</summary>
internal static class LessonsLooks
{
    public const string No = "no";

    private const string Share = "0.0%";
    private const string OneDecimal = "0.0";
    private const string ThreeDecimals = "0.000";
    private const string FourDecimals = "0.0000";

    private static readonly ColumnLook Enough = new("Enough to compare") { GreyAt = No };

    public static IReadOnlyList<ColumnLook> Withdrawals { get; } =
    [Enough, new("Share") { Format = Share, HasBars = true }, .. As(Share, "95 % low", "95 % high")];

    public static IReadOnlyList<ColumnLook> Bridges { get; } =
    [
        Enough,
        new("Per 100 bridge-years") { Format = OneDecimal, HasBars = true },
        .. As(OneDecimal, "Months watched", "Rate 95 % low", "Rate 95 % high", "Median months", "Median 95 % low", "Median 95 % high"),
        .. As(ThreeDecimals, "Log-rank chi-squared"),
        .. As(FourDecimals, "Log-rank p"),
    ];

    public static IReadOnlyList<ColumnLook> Steps { get; } =
    [
        new("Share left") { Format = Share, HasBars = true },
        .. As(OneDecimal, "Months"),
        .. As(FourDecimals, "Standard error"),
        .. As(Share, "95 % low", "95 % high"),
    ];

    public static IReadOnlyList<ColumnLook> Wear { get; } =
    [
        Enough,
        new("Median mm a month") { Format = FourDecimals, HasBars = true },
        .. As(FourDecimals, "Lower quartile", "Upper quartile", "Least", "Most"),
    ];

    public static IReadOnlyList<ColumnLook> Reasons { get; } = [new("Items") { HasBars = true }];

    public static IReadOnlyList<ColumnLook> Agreement { get; } = [Enough, .. As(ThreeDecimals, "Kappa")];

    private static IEnumerable<ColumnLook> As(string format, params string[] headings) =>
        headings.Select(h => new ColumnLook(h) { Format = format });
}
