using ExamDocs.Core.Findings;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Recalling;

/// <summary>An item of the register and what a safety notice says of it.</summary>
/// <param name="Item">As recorded last.</param>
/// <param name="Owner">Whose it is as the latest visit names it; null where not recorded.</param>
/// <param name="OtherIds">Ids that it had in other records.</param>
/// <param name="Verdict">Affected, not affected, or not to be told.</param>
/// <param name="Reasons">Why.</param>
/// <param name="Standing">How it stands today; null where no visit decided about it.</param>
/// <param name="Why">Why it stands so, in a sentence; null where no visit decided about it.</param>
public sealed record RecalledItem(
    Item Item,
    string? Owner,
    IReadOnlyList<string> OtherIds,
    RecallVerdict Verdict,
    IReadOnlyList<Message> Reasons,
    Standing? Standing,
    Message? Why
)
{
    /// <summary>What the notice says of it by its own markings, without what is fitted to it and what it may be.</summary>
    public RecallVerdict Alone { get; init; } = Verdict;

    /// <summary>Its place among the items that visits decided about; null for any other.</summary>
    public int? Place { get; init; }

    /// <summary>The places of what is fitted to it.</summary>
    public IReadOnlyList<int> Parts { get; init; } = [];

    /// <summary>The visit that recorded it last.</summary>
    public Visit LatestVisit { get; init; } = new();

    /// <summary>The limits that this visit has for its maker and model.</summary>
    public IReadOnlyList<MakersLimits> Limits { get; init; } = [];

    /// <summary>Every visit that decided about it, the latest first.</summary>
    public IReadOnlyList<FoundVisit> History { get; init; } = [];

    /// <summary>Whether a withdrawal of it is open, apart from what is fitted to it.</summary>
    public bool IsWithdrawn { get; init; }
}
