using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>Says since when, why and by which documents an issued document, or a line of it, no longer holds.</summary>
internal static class EndedWords
{
    /// <param name="document">A document that later visits ended, whole or in some lines.</param>
    public static Message Of(DocumentStatus document) =>
        document.EndedLines.Count == 0
            ? $"ended{On(document.EndedOn)}{Because(document.EndedReason)}"
            : Message.Join("; ", document.EndedLines.Select(Of));

    public static Message Of(EndedLine line) =>
        $"{(line.Item.Length == 0 ? WithoutId : Message.AsIs(line.Item))} ended{On(line.On)}: {line.Why}{In(line.Documents)}";

    public static Message On(LocalDate? day) =>
        day is { } on ? $" on {on.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)}" : Message.None;

    public static Message Because(string? reason) => Message.AsIs(string.IsNullOrWhiteSpace(reason) ? "" : $" ({reason})");

    private static Message WithoutId => $"an item without an id";

    private static Message In(IReadOnlyList<string> documents) =>
        Message.AsIs(documents.Count == 0 ? "" : $" ({string.Join(", ", documents)})");
}
