namespace ExamDocs.Core.Regimes;

/// <summary>A law or standard that a regime stands for.</summary>
public sealed record Law
{
    public required string Title { get; init; }

    /// <summary>Its number or citation, for example SI 1998/2307.</summary>
    public required string Number { get; init; }

    public required Confidence Confidence { get; init; }

    /// <summary>Title and number.</summary>
    public string Cited => string.Equals(Title, Number, StringComparison.Ordinal) ? Title : $"{Title} ({Number})";
}
