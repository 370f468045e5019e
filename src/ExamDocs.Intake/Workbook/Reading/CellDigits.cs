using System.Globalization;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>The digits of a number cell as a user sees them.</summary>
internal static class CellDigits
{
    /// <summary>Whole numbers up to here are exact in a number cell, with their fifteen digits.</summary>
    private const double Exact = 1e15;

    private const double Smallest = 1e-9;

    /// <summary>Whether more digits may have been typed than the cell could keep.</summary>
    public static bool MayHaveLostDigits(double number) => Math.Abs(number) >= Exact;

    /// <summary>Null where it is not a number, or larger or smaller than anything that is measured.</summary>
    public static double? Parse(string raw) =>
        double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
        && double.IsFinite(number)
        && Math.Abs(number) < 1e28
        && (number == 0 || Math.Abs(number) >= Smallest)
            ? number
            : null;

    /// <summary>
    /// Plain digits without an exponent. Files hold 1.1 as 1.1000000000000001 at times: the shortest digits that give
    /// the same number are those that were typed.
    /// </summary>
    public static string Plain(double number) =>
        decimal.Parse(number.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture)
            .ToString("0.############################", CultureInfo.InvariantCulture);
}
