using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>
/// That a part was fitted to an item or taken off it, as another record tells; ids as in this record where it has the item.
/// </summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Whole">Id of the item it was fitted to.</param>
/// <param name="On">The day.</param>
/// <param name="Word">What it tells.</param>
public sealed record PastFitting(string Part, string Whole, LocalDate On, FittingWord Word);

/// <summary>What other records tell of a part and an item.</summary>
public enum FittingWord
{
    /// <summary>By all records together it is on it now.</summary>
    StillOn,

    /// <summary>The latest word of the other records was that it is on it.</summary>
    WasOn,

    /// <summary>The latest word of the other records was that a renewal took it off.</summary>
    TakenOff,
}

/// <summary>A part that is on an item of this record and is not itself in it.</summary>
/// <param name="Id">Id as recorded last.</param>
/// <param name="Whole">Id of the item it is on, as in this record.</param>
/// <param name="Outcome">What its latest examination came to, with all that is known since; undetermined where it was never
/// examined.</param>
public sealed record PartElsewhere(string Id, string Whole, Outcome Outcome)
{
    public string? PartNumber { get; init; }

    /// <summary>Last day on which it may be used, inclusive; null where none is set.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>Latest date for its next examination, inclusive; null where none is known.</summary>
    public LocalDate? NextBy { get; init; }

    /// <summary>Number of the document that says so; null where there is none.</summary>
    public string? Document { get; init; }
}

/// <summary>An item that is not in this record and has a part of it on.</summary>
/// <param name="Id">Id as recorded last.</param>
/// <param name="Part">Id of the part, as in this record.</param>
/// <param name="Limits">Its maker's limits, as recorded last, that list the parts permitted.</param>
public sealed record WholeElsewhere(string Id, string Part, IReadOnlyList<MakersLimits> Limits);
