using System.Globalization;
using ExamDocs.Core.Records;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Intake.Binding;

/// <summary>Reads ISO 8601 calendar dates, 1900 to 2200, whole or down to the month or the year.</summary>
internal static class DateText
{
    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture("uuuu-MM-dd");

    /// <summary>Null where the text is not such a date.</summary>
    public static LocalDate? ReadDay(string text) =>
        Day.Parse(text) is { Success: true, Value: { Year: >= 1900 and <= 2200 } day } ? day : null;

    /// <summary>Null where the text is not such a date, month or year.</summary>
    public static PartialDate? ReadPartial(string text)
    {
        if (ReadDay(text) is { } day)
            return PartialDate.Of(day);
        if (text.Length == 7 && text[4] == '-' && Digits(text[..4]) is { } year && Digits(text[5..]) is { } month)
            return year is >= 1900 and <= 2200 && month is >= 1 and <= 12 ? new PartialDate(year, month) : null;
        return text.Length == 4 && Digits(text) is { } alone and >= 1900 and <= 2200 ? new PartialDate(alone) : null;
    }

    private static int? Digits(string text) =>
        text.All(char.IsAsciiDigit) && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : null;
}
