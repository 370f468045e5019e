namespace ExamDocs.Intake.RuleFiles;

/// <summary>The user's letterhead as it stands in its file: docs/letterhead.schema.json.</summary>
public sealed record LetterheadFile
{
    public required string Name { get; init; }

    public string? Address { get; init; }

    public string? Contact { get; init; }

    /// <summary>The number to ring about an item, on its label.</summary>
    public string? Telephone { get; init; }

    /// <summary>Name of a picture beside the file.</summary>
    public string? Logo { get; init; }

    /// <summary># and six hexadecimal digits.</summary>
    public string? Colour { get; init; }

    public string? Footer { get; init; }
}
