using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>Why the examination was made.</summary>
public enum Basis
{
    SixMonth,
    TwelveMonth,
    Scheme,
    Exceptional,
    FirstUse,
    Installation,
}

/// <summary>The examiner's own conclusion.</summary>
public enum Conclusion
{
    Fit,
    Withdraw,
}

/// <summary>What was seen against a criterion.</summary>
public enum ObservedState
{
    Clear,
    Noted,
    Doubt,
    Defect,
    NoSign,
    NotExamined,
    NotApplicable,
}

/// <summary>When a defect is a danger.</summary>
public enum Danger
{
    Now,
    Later,
}

/// <summary>An examination scheme drawn up by a competent person.</summary>
public sealed record Scheme
{
    public string? Reference { get; init; }

    public string? Author { get; init; }

    public int? Months { get; init; }
}

/// <summary>The exceptional circumstance that called for the examination.</summary>
public sealed record ExceptionalEvent
{
    public string? What { get; init; }

    public LocalDate? On { get; init; }
}

/// <summary>The examiner's record against one criterion.</summary>
public sealed record Observation
{
    public string? Criterion { get; init; }

    /// <summary>The word as typed; null where nothing was.</summary>
    public string? StateAsTyped { get; init; }

    /// <summary>The state that the word names; null where it names none.</summary>
    public ObservedState? State { get; init; }

    public string? Note { get; init; }

    public string? Photo { get; init; }
}

/// <summary>Diameter readings at one place along a rope.</summary>
public sealed record DiameterStation
{
    /// <summary>Distance from the reference end, millimetres.</summary>
    public decimal? PositionMm { get; init; }

    /// <summary>Millimetres, usually two at right angles. An unreadable reading is null.</summary>
    public IReadOnlyList<decimal?> ReadingsMm { get; init; } = [];
}

/// <summary>A test made as part of the examination.</summary>
public sealed record TestMade
{
    public string? Description { get; init; }

    public string? Result { get; init; }
}

/// <summary>Whom the examiner has told of a defect.</summary>
public sealed record Notification
{
    public string? Whom { get; init; }

    public string? How { get; init; }

    public LocalDate? On { get; init; }
}

/// <summary>A defect that is, or could become, a danger to persons.</summary>
public sealed record Defect
{
    public string? Criterion { get; init; }

    public string? Part { get; init; }

    public string? Description { get; init; }

    public Danger? Danger { get; init; }

    /// <summary>The time by which it could become a danger; the day before it is the last day of use.</summary>
    public LocalDate? BecomesDangerOn { get; init; }

    /// <summary>Repair, renewal or alteration needed.</summary>
    public string? Remedy { get; init; }

    /// <summary>Existing or imminent risk of serious personal injury.</summary>
    public bool? ImminentRisk { get; init; }

    public Notification? Notified { get; init; }
}

/// <summary>What wears the item: recorded to compare like with like.</summary>
public sealed record Exposure
{
    public string? Hardware { get; init; }

    public string? Ground { get; init; }

    public decimal? UserMassKg { get; init; }

    public string? Use { get; init; }
}

/// <summary>One examination of one item.</summary>
public sealed record Examination
{
    public string? Item { get; init; }

    public string? Examiner { get; init; }

    /// <summary>Who writes the report; the examiner where not recorded.</summary>
    public string? Author { get; init; }

    /// <summary>Who signs for the author; the examiner where not recorded.</summary>
    public string? AuthenticatedBy { get; init; }

    public string? Regime { get; init; }

    public Basis? Basis { get; init; }

    public Scheme? Scheme { get; init; }

    public ExceptionalEvent? Event { get; init; }

    /// <summary>The visit's date where not recorded.</summary>
    public LocalDate? ExaminedOn { get; init; }

    /// <summary>True where a date was typed that could not be read: the visit's date must not stand in for it.</summary>
    public bool ExaminedOnUnreadable { get; init; }

    public LocalDate? NextBy { get; init; }

    public IReadOnlyList<Observation> Observations { get; init; } = [];

    /// <summary>False where every criterion is recorded as not examined: kit that was taken out of use unseen was not examined.</summary>
    public bool WasLookedAt => Observations.Count == 0 || Observations.Any(o => o.State is not ObservedState.NotExamined);

    public IReadOnlyList<DiameterStation> Diameters { get; init; } = [];

    public IReadOnlyList<TestMade> Tests { get; init; } = [];

    public IReadOnlyList<Defect> Defects { get; init; } = [];

    public Exposure? Exposure { get; init; }

    public Conclusion? Conclusion { get; init; }

    /// <summary>The day examined: its own, else the visit's; null where neither is there, or its own cannot be read.</summary>
    public LocalDate? DayAt(Visit visit) => ExaminedOn ?? (ExaminedOnUnreadable ? null : visit.ExaminedOn);
}
