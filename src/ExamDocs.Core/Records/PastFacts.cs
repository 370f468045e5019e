using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>A withdrawal from before this record, as a store remembers it.</summary>
/// <param name="ItemId">The item withdrawn, by its id in this record.</param>
/// <param name="Document">Number of the document that withdrew it, the one to name it by; null where there is none.</param>
/// <param name="On">The day it was withdrawn.</param>
/// <param name="Codes">Codes of its reasons, for example W1.</param>
/// <param name="NeverReleasable">Only a release because it was recorded in error ends it: saw contact, severe loading, an expired life,
/// destroyed.</param>
public sealed record PastWithdrawal(string ItemId, string? Document, LocalDate On, IReadOnlyList<string> Codes, bool NeverReleasable)
{
    /// <summary>
    /// Ids of the withdrawn parts it depends on (W9), or of the wholes it was not permitted on (W8); empty where not known.
    /// </summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>Every document that says so, <see cref="Document"/> among them: labels, notices, reports.</summary>
    public IReadOnlyList<string> Documents { get; init; } = [];

    /// <summary>It was withdrawn by another version of this visit's record.</summary>
    public bool IsOfThisVisit { get; init; }

    /// <summary>Which maker's safety notice withdrew it, as a recall names it; null where none did.</summary>
    public string? Notice { get; init; }

    /// <summary>Another notice, or an examination, withdrew it on the same day: the day alone does not tell which is meant.</summary>
    public bool SharesDay { get; init; }

    /// <summary>Whether a document of this number withdrew it.</summary>
    public bool IsNamed(string? number) =>
        number is not null
        && (string.Equals(number, Document, StringComparison.Ordinal) || Documents.Contains(number, StringComparer.Ordinal));
}

/// <summary>
/// An earlier examination as it was recorded. It is never judged again: what was decided on it is a <see cref="PastWithdrawal"/>.
/// </summary>
/// <param name="ItemId">The item examined, by its id in this record.</param>
/// <param name="On">The day examined.</param>
/// <param name="Document">Number of the document that reports it; null where there is none.</param>
/// <param name="Examination">As recorded.</param>
public sealed record PastExamination(string ItemId, LocalDate On, string? Document, Examination Examination)
{
    /// <summary>Remedies that its record holds of the item.</summary>
    public IReadOnlyList<Remedy> Remedies { get; init; } = [];

    /// <summary>Renewals that its record holds of the item's parts.</summary>
    public IReadOnlyList<Renewal> Renewals { get; init; } = [];
}

/// <summary>A release that an earlier record holds, sound in that record.</summary>
/// <param name="ItemId">The item, by its id in this record.</param>
/// <param name="By">Name of the competent person.</param>
/// <param name="Release">As recorded.</param>
public sealed record PastRelease(string ItemId, string? By, Release Release);
