namespace ExamDocs.Intake.RuleFiles;

/// <summary>How a firm's own list is to be read, as it stands in its file: docs/map.schema.json.</summary>
public sealed record ListMapFile
{
    public required string Format { get; init; }

    /// <summary>The list it was made for; it may be used for others.</summary>
    public string? List { get; init; }

    /// <summary>What is to be settled before the list can be taken, a sentence each. Not read.</summary>
    public IReadOnlyList<string> ToSettle { get; init; } = [];

    public string? Dates { get; init; }

    public IReadOnlyList<ListMapColumn> Columns { get; init; } = [];

    public IReadOnlyList<string>? Makers { get; init; }

    public IReadOnlyList<ListMapKind> Kinds { get; init; } = [];

    public IReadOnlyList<ListMapWord> Words { get; init; } = [];

    public IReadOnlyList<ListMapColour> Colours { get; init; } = [];
}

/// <summary>A column and what it is. What is proposed, how sure that is, and the samples are there to look at.</summary>
public sealed record ListMapColumn(
    string Heading,
    string? To,
    string? Proposed = null,
    string? Sure = null,
    IReadOnlyList<string>? Samples = null
);

/// <summary>A word for a kind of kit and its category.</summary>
public sealed record ListMapKind(
    string Word,
    string? Category,
    string? Proposed = null,
    string? Sure = null,
    int? Rows = null,
    IReadOnlyList<string>? Samples = null
);

/// <summary>A word and what it says of an item's use.</summary>
public sealed record ListMapWord(string Word, string? Means, int? Rows = null, IReadOnlyList<string>? Samples = null);

/// <summary>A colour and what it says of an item's use.</summary>
public sealed record ListMapColour(string Colour, string? Means, IReadOnlyList<string>? Rows = null);
