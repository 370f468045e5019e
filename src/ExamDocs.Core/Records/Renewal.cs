using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>A part taken off and another fitted; a removal alone has no fitted part.</summary>
public sealed record Renewal
{
    /// <summary>The item that was renewed.</summary>
    public string? Item { get; init; }

    public string? RemovedPart { get; init; }

    public string? FittedPart { get; init; }

    public string? Reason { get; init; }

    public string? DoneBy { get; init; }

    public string? SupervisedBy { get; init; }

    public LocalDate? DoneOn { get; init; }

    /// <summary>Id of the person who re-tied the part's termination; null where it was left as its maker tied it.</summary>
    public string? RetiedBy { get; init; }
}

/// <summary>A repair or alteration made to an item.</summary>
public sealed record Remedy
{
    public string? Item { get; init; }

    public string? What { get; init; }

    public string? DoneBy { get; init; }

    public LocalDate? DoneOn { get; init; }

    public string? Evidence { get; init; }
}

/// <summary>A competent person's decision that an earlier withdrawal is over, with its grounds.</summary>
public sealed record Release
{
    public string? Item { get; init; }

    /// <summary>Number of the document that withdrew it; may be left out where that withdrawal is in the same record.</summary>
    public string? Document { get; init; }

    public string? By { get; init; }

    public LocalDate? On { get; init; }

    public string? Grounds { get; init; }
}

/// <summary>What became of a withdrawn item.</summary>
public enum DisposalAction
{
    Quarantined,
    SentForRepair,
    Destroyed,
}

public sealed record Disposal
{
    public string? Item { get; init; }

    public DisposalAction? Action { get; init; }

    public string? By { get; init; }

    public LocalDate? On { get; init; }
}
