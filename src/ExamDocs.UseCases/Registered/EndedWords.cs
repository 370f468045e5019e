using System.Globalization;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>Says since when, why and by which documents an issued document, or a line of it, no longer holds.</summary>
internal static class EndedWords
{
    /// <param name="document">A document that later visits ended, whole or in some lines.</param>
    public static string Of(DocumentStatus document) =>
        document.EndedLines.Count == 0
            ? $"ended{On(document.EndedOn)}{Because(document.EndedReason)}"
            : string.Join("; ", document.EndedLines.Select(Of));

    public static string Of(EndedLine line) =>
        $"{(line.Item.Length == 0 ? "an item without an id" : line.Item)} ended{On(line.On)}: "
        + $"{line.Why}{(line.Documents.Count == 0 ? "" : $" ({string.Join(", ", line.Documents)})")}";

    public static string On(LocalDate? day, string word = " on ") =>
        day is { } on ? $"{word}{on.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)}" : "";

    public static string Because(string? reason) => string.IsNullOrWhiteSpace(reason) ? "" : $" ({reason})";
}
