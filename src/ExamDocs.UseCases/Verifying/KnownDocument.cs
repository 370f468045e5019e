using NodaTime;

namespace ExamDocs.UseCases.Verifying;

/// <summary>What became of a number.</summary>
internal enum NumberState
{
    Pending,
    Issued,
    Void,
}

/// <summary>How an issued document came to an end.</summary>
internal enum DocumentEnd
{
    Replaced,
    Withdrawn,
}

/// <summary>What a register knows of a number that it has given out.</summary>
internal sealed record KnownDocument
{
    public required string Number { get; init; }

    public required NumberState State { get; init; }

    /// <summary>Of the file as issued, lower-case hexadecimal; null for a number under which nothing came out.</summary>
    public string? Sha256 { get; init; }

    /// <summary>Why nothing came out; null for what did.</summary>
    public string? VoidReason { get; init; }

    /// <summary>Null for what is current.</summary>
    public DocumentEnd? Ended { get; init; }

    public string? EndedReason { get; init; }

    public LocalDate? EndedOn { get; init; }

    /// <summary>Number of the document that took its place.</summary>
    public string? ReplacedBy { get; init; }
}

/// <summary>A register, as far as verifying asks it.</summary>
internal interface IKnownDocuments
{
    /// <summary>Null for a number that it never gave out.</summary>
    KnownDocument? Find(string number);
}
