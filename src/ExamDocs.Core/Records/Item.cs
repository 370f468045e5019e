using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>What the kit is for, which sets the interval under gb-loler.</summary>
public enum Purpose
{
    LiftsPersons,
    Accessory,
    Other,
    FallArrestOnly,
}

/// <summary>Where the item was at the visit.</summary>
public enum ItemStatus
{
    InUse,
    Stored,
    NotPresented,
    Lost,
    Destroyed,
}

/// <summary>A safe working load or marked strength: a value with its unit, or the statement that none is marked.</summary>
public sealed record Load
{
    /// <summary>Greater than zero where recorded.</summary>
    public decimal? Value { get; init; }

    /// <summary>kg, t, kN or persons.</summary>
    public string? Unit { get; init; }

    public bool NotMarked { get; init; }

    /// <summary>Where the load was taken from when the item itself bears none.</summary>
    public string? Basis { get; init; }
}

/// <summary>The maker's declaration of conformity.</summary>
public sealed record Declaration
{
    public string? Reference { get; init; }

    public LocalDate? On { get; init; }
}

/// <summary>A thing with an identity of its own; a replaceable part is an item fitted to another.</summary>
public sealed record Item
{
    public string? Id { get; init; }

    public string? Category { get; init; }

    public string? Description { get; init; }

    public string? Maker { get; init; }

    public string? Model { get; init; }

    public string? PartNumber { get; init; }

    public string? Serial { get; init; }

    public string? OwnersMark { get; init; }

    public PartialDate? Manufactured { get; init; }

    public PartialDate? Purchased { get; init; }

    public PartialDate? FirstUsed { get; init; }

    public bool? NeverUsed { get; init; }

    /// <summary>How often it was cleaned so far, 0 or more; null where that is not recorded.</summary>
    public int? Cleanings { get; init; }

    /// <summary>Printed obsolescence date; the last day of service, inclusive.</summary>
    public PartialDate? ObsoleteOn { get; init; }

    public Load? SafeWorkingLoad { get; init; }

    public Load? MarkedStrength { get; init; }

    public IReadOnlyList<string> Standards { get; init; } = [];

    /// <summary>Id of the item that this one is a part of.</summary>
    public string? FittedTo { get; init; }

    public PartialDate? LastExamined { get; init; }

    public Purpose? Purpose { get; init; }

    public Declaration? Declaration { get; init; }

    /// <summary>Physical evidence of the last thorough examination that came with it from another undertaking.</summary>
    public string? TransferEvidence { get; init; }

    public ItemStatus? Status { get; init; }

    /// <summary>Id under which an earlier record has this same item.</summary>
    public string? Formerly { get; init; }

    /// <summary>Earlier items that this one could be taken for and is not.</summary>
    public IReadOnlyList<DifferentItem> NotTheSameAs { get; init; } = [];
}

/// <summary>An earlier item that another is said not to be, and how that is known.</summary>
public sealed record DifferentItem
{
    /// <summary>Id of the earlier item, as an earlier record has it.</summary>
    public string? Id { get; init; }

    /// <summary>Number of the document that reports on it; null where none is named.</summary>
    public string? Document { get; init; }

    /// <summary>How the two are told apart, in words.</summary>
    public string? Because { get; init; }
}
