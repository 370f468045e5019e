using System.Globalization;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences;

/// <summary>Turns what was recorded into words for reasons and findings.</summary>
internal static class Say
{
    /// <summary>The day as documents print it, 2 May 2024, because reasons stand beside such dates.</summary>
    public static string Day(LocalDate day) => day.ToString("d MMM uuuu", CultureInfo.InvariantCulture);

    /// <summary>The date at the precision recorded: on 2 May 2024, in May 2024, in 2024.</summary>
    public static string When(PartialDate date) =>
        date switch
        {
            { Month: null } => string.Create(CultureInfo.InvariantCulture, $"in {date.Year}"),
            { Day: null } => $"in {date.Earliest.ToString("MMM uuuu", CultureInfo.InvariantCulture)}",
            _ => $"on {Day(date.Earliest)}",
        };

    /// <summary>An identifier of the catalogue as words: cover-cut becomes cover cut.</summary>
    public static string Criterion(string? id) => id?.Replace('-', ' ') ?? "a criterion not named";

    public static string Number(decimal number) => (number / 1.000000000000000000000000000000000m).ToString(CultureInfo.InvariantCulture);

    /// <summary>A whole number in digits.</summary>
    public static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The parts that are not blank, joined.</summary>
    public static string Join(string separator, params string?[] parts) =>
        string.Join(separator, parts.Where(p => !string.IsNullOrWhiteSpace(p)));

    /// <summary>The item's id; where it has none, words for it.</summary>
    public static string Name(this SentenceBook book, Item item) => item.Id ?? item.Description ?? book.Words.ItemWithoutId;

    /// <summary>The criterion with the examiner's note, or with its question where there is none.</summary>
    public static string Observed(this SentenceBook book, Observation observation, string? question) =>
        book.Reasons.Observed(observation.Criterion, observation.Note, question);

    /// <summary>The defect in the examiner's words, or the criterion that has it.</summary>
    public static string What(this SentenceBook book, Defect defect) =>
        defect.Description ?? (defect.Criterion is { } id ? book.Words.Criterion(id) : book.Reasons.DefectNotDescribed);
}
