using System.Data.Common;
using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Register.Storage;

/// <summary>A day as it is stored, for example 2026-05-11.</summary>
internal static class StoredDay
{
    public static string Of(LocalDate day) => day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    public static string? Of(LocalDate? day) => day is { } known ? Of(known) : null;

    /// <exception cref="UnparsableValueException">The text is not a day.</exception>
    public static LocalDate Read(string text) => LocalDatePattern.Iso.Parse(text).GetValueOrThrow();

    /// <summary>The day in a column; null where it holds none.</summary>
    /// <inheritdoc cref="Read"/>
    public static LocalDate? Day(this DbDataReader row, int column) => row.Text(column) is { } text ? Read(text) : null;
}
