using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>Who may re-tie a termination, by the maker's word.</summary>
public enum Retying
{
    Maker,
    CompetentPerson,
    User,
}

/// <summary>The document that a limit comes from.</summary>
public sealed record LimitsSource
{
    public string? Title { get; init; }

    public string? Revision { get; init; }

    public string? Page { get; init; }
}

/// <summary>The maker's instructions were sought and not found: the examiner's own end of service instead.</summary>
public sealed record Unobtainable
{
    public string? Sought { get; init; }

    /// <summary>Last day of service, inclusive.</summary>
    public LocalDate? UseUntil { get; init; }
}

/// <summary>
/// What the maker's instructions allow for a model or a part. Durations are whole calendar years or months; the last
/// day of a limit is inside it.
/// </summary>
public sealed record MakersLimits
{
    public string? Maker { get; init; }

    public string? Model { get; init; }

    public string? PartNumber { get; init; }

    public LimitsSource? Source { get; init; }

    public int? MaxUseYears { get; init; }

    public int? MaxStorageYears { get; init; }

    public int? MaxAgeYears { get; init; }

    /// <summary>How often it may be cleaned at most, inclusive.</summary>
    public int? MaxCleanings { get; init; }

    /// <summary>The maker retires it after any exceptional event, such as an arrested fall.</summary>
    public bool EventEndsService { get; init; }

    public int? IntervalMonths { get; init; }

    /// <summary>The maker states that there is no time limit. It removes time limits only.</summary>
    public bool NoLimit { get; init; }

    public Unobtainable? Unobtainable { get; init; }

    /// <summary>Millimetres.</summary>
    public decimal? NominalDiameterMm { get; init; }

    /// <summary>Per cent of nominal, to either side, inclusive.</summary>
    public decimal? DiameterTolerancePercent { get; init; }

    /// <summary>Null: the maker lists none. Empty is read as null.</summary>
    public IReadOnlyList<string>? PermittedParts { get; init; }

    /// <summary>Whether a part of this number may be fitted, letter by letter; null where the maker lists none.</summary>
    public bool? Permits(string? partNumber) => PermittedParts?.Contains(partNumber, StringComparer.Ordinal);

    /// <summary>Millimetres of tail beyond a knot.</summary>
    public decimal? MinTailMm { get; init; }

    public Retying? Retying { get; init; }

    /// <summary>What every item of the model is, in words; an item's own description comes first.</summary>
    public string? Description { get; init; }

    /// <summary>The load that is marked on every item of the model; an item's own comes first.</summary>
    public Load? SafeWorkingLoad { get; init; }

    /// <summary>The strength that is marked on every item of the model; an item's own comes first.</summary>
    public Load? MarkedStrength { get; init; }

    /// <summary>Standards marked on every item of the model; an item's own come first.</summary>
    public IReadOnlyList<string> Standards { get; init; } = [];
}
