using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Determination;

/// <summary>A withdrawal from before this record, as a store remembers it.</summary>
/// <param name="ItemId">The item withdrawn.</param>
/// <param name="Document">Number of the document that withdrew it.</param>
/// <param name="On">The day it was withdrawn.</param>
/// <param name="Codes">Codes of the reasons it rested on, for example W1.</param>
/// <param name="NeverReleasable">It rested on something no release can undo: saw contact, severe loading, an expired life.</param>
public sealed record PastWithdrawal(string ItemId, string? Document, LocalDate On, IReadOnlyList<string> Codes, bool NeverReleasable)
{
    /// <summary>Ids of the withdrawn parts it rested on (W9), or of the wholes it was not permitted on (W8); empty where not known.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>
    /// It is known to be of another visit than the record's, so that on the day of the record's own examination it counts as
    /// well; of the two it cannot be told which came first.
    /// </summary>
    public bool IsOfAnotherVisit { get; init; }

    /// <summary>Maker of the item withdrawn; null where not known.</summary>
    public string? Maker { get; init; }

    /// <summary>Its model; null where not known.</summary>
    public string? Model { get; init; }

    /// <summary>Its serial number; null where not known: it is then not looked for under other ids.</summary>
    public string? Serial { get; init; }
}

/// <summary>An earlier examination as it was recorded. It is never judged again: what was decided on it is a <see cref="PastWithdrawal"/>.</summary>
/// <param name="ItemId">The item examined.</param>
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

/// <summary>What is known of the items from before this record, in any order. Plain data: rules know no store.</summary>
public sealed record History(IReadOnlyList<PastWithdrawal> Withdrawals)
{
    public static History None { get; } = new([]);

    /// <summary>Examinations from before, of any of the items.</summary>
    public IReadOnlyList<PastExamination> Examinations { get; init; } = [];

    /// <summary>What of it can bear on a record: what is of its items, and withdrawals of what is marked like one of them.</summary>
    public History For(ExaminationRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var ids = record.Items.Select(i => i.Id).Concat(record.Examinations.Select(e => e.Item)).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var markings = record.Items.Where(i => i.Serial is not null).Select(ItemMarking.Of).ToHashSet();
        return new([.. Withdrawals.Where(w => ids.Contains(w.ItemId) || (w.Serial is not null && markings.Contains(ItemMarking.Of(w))))])
        {
            Examinations = [.. Examinations.Where(e => ids.Contains(e.ItemId))],
        };
    }
}
