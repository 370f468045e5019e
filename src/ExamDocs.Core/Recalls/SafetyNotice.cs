using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Recalls;

/// <summary>What a maker's safety notice says of an item, from the best to the worst.</summary>
public enum RecallVerdict
{
    /// <summary>Something on record shows that the notice does not name it.</summary>
    NotAffected,

    /// <summary>What is on record does not settle it.</summary>
    CannotTell,

    /// <summary>The notice names it.</summary>
    Affected,
}

/// <summary>A maker's safety notice as data (format examdocs-recall/1).</summary>
public sealed record SafetyNotice
{
    public const string FormatName = "examdocs-recall/1";

    public required string Maker { get; init; }

    /// <summary>Other names under which the maker's kit is known.</summary>
    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>The maker's own reference.</summary>
    public required string Reference { get; init; }

    /// <summary>The day of the notice.</summary>
    public required LocalDate On { get; init; }

    /// <summary>What the maker demands, in a sentence.</summary>
    public required string Demands { get; init; }

    /// <summary>Where whoever typed it read it.</summary>
    public required string ReadAt { get; init; }

    /// <summary>The kit that it names: an item is affected where any of these names it.</summary>
    public required IReadOnlyList<NamedKit> Affected { get; init; }
}

/// <summary>
/// Kit that a notice names. Everything that is given has to hold; what is left empty narrows nothing. Of serial numbers, one range,
/// pattern or single number is enough.
/// </summary>
public sealed record NamedKit
{
    public IReadOnlyList<string> Models { get; init; } = [];

    public IReadOnlyList<string> PartNumbers { get; init; } = [];

    public IReadOnlyList<SerialRange> SerialRanges { get; init; } = [];

    /// <summary>With <c>*</c> for any number of characters, <c>?</c> for one and <c>#</c> for one digit.</summary>
    public IReadOnlyList<string> SerialPatterns { get; init; } = [];

    public IReadOnlyList<string> Serials { get; init; } = [];

    /// <summary>How many characters at the end of a serial number check the others and do not count in the order.</summary>
    public int CheckCharacters { get; init; }

    public IReadOnlyList<string> Batches { get; init; } = [];

    /// <summary>First day of manufacture, inclusive; null where it is open.</summary>
    public PartialDate? ManufacturedFrom { get; init; }

    /// <summary>Last day of manufacture, inclusive; null where it is open.</summary>
    public PartialDate? ManufacturedTo { get; init; }

    internal bool NamesSerials => SerialRanges.Count + SerialPatterns.Count + Serials.Count > 0;
}

/// <summary>Serial numbers between two, both inclusive.</summary>
/// <param name="From">Null where the range has no beginning.</param>
/// <param name="To">Null where it has no end.</param>
public sealed record SerialRange(string? From = null, string? To = null)
{
    public override string ToString() => $"{From ?? "\u2026"} \u2013 {To ?? "\u2026"}";
}
