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
}

/// <summary>What is known of the items from before this record. Plain data: rules know no store.</summary>
public sealed record History(IReadOnlyList<PastWithdrawal> Withdrawals)
{
    public static History None { get; } = new([]);
}
