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

/// <summary>Why a withdrawal is over.</summary>
public enum ReleaseReason
{
    /// <summary>What was wrong was put right: a renewal or remedy on record names the item.</summary>
    MadeGood,

    /// <summary>Looked at again, a doubt or the examiner's own conclusion did not hold. It never ends a defect.</summary>
    ExaminedAgain,

    /// <summary>The withdrawal should not have been recorded; the grounds say what was wrong and how that is known.</summary>
    RecordedInError,
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

    /// <summary>The day of the withdrawal, where no document is named.</summary>
    public LocalDate? WithdrawnOn { get; init; }

    /// <summary>Null where it is not stated: made good where a renewal or remedy is on record, else examined again.</summary>
    public ReleaseReason? Because { get; init; }
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
