namespace ExamDocs.Core.Regimes;

/// <summary>One particular that a report or record has to hold.</summary>
public sealed record Particular
{
    /// <summary>Number as cited, for example 8(c).</summary>
    public required string Paragraph { get; init; }

    /// <summary>What has to be stated, in our own words.</summary>
    public required string Words { get; init; }

    public required string Source { get; init; }

    public required Confidence Confidence { get; init; }

    /// <summary>Codes of the rules that ask for it in this regime.</summary>
    public IReadOnlyList<string> Checks { get; init; } = [];
}

/// <summary>A rule by its code, and the provision of a regime behind it.</summary>
/// <param name="Code">For example CON006, or D1.</param>
/// <param name="Source">The provision behind it.</param>
public sealed record RegimeCheck(string Code, string Source);
