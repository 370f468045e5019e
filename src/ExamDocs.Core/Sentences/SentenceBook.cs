using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences;

/// <summary>
/// What rules, ledger and measurements say, one whole sentence each with its values: a language is a subclass, so that a
/// sentence without its translation does not compile. What the user typed goes in as it was typed.
/// </summary>
public abstract partial class SentenceBook
{
    /// <summary>The language of files and of the screen.</summary>
    public static SentenceBook English { get; } = new EnglishSentences();

    /// <summary>The day with its month as a word.</summary>
    public abstract string Day(LocalDate day);

    /// <summary>The date at the precision recorded, with the preposition: on 2 May 2024, in May 2024, in 2024.</summary>
    public abstract string When(PartialDate date);

    /// <summary>With the decimals it was typed with, closing noughts left out.</summary>
    public abstract string Number(decimal number);

    /// <summary>Two decimals at least, three at most, with the unit.</summary>
    public abstract string Millimetres(double mm);

    /// <summary>With its sign and the unit, rounded up.</summary>
    public abstract string Uncertainty(MeanUncertainty uncertainty);

    /// <summary>Where along the rope, with the preposition: at 180 mm.</summary>
    public abstract string Place(decimal? positionMm);

    /// <summary>The criterion in words; null where it is not named.</summary>
    public abstract string Criterion(string? id);

    /// <summary>Stands for the name of an item that has none.</summary>
    public abstract string ItemWithoutId { get; }

    /// <summary>The maker's document with revision and page.</summary>
    public abstract string Document(MakersLimits limits);

    /// <summary>What a check found.</summary>
    public abstract string Finding(Finding finding);
}
