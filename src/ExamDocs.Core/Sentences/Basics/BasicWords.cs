using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences.Basics;

/// <summary>The words of which sentences are made: days, numbers, places, documents and answers.</summary>
public abstract class BasicWords
{
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

    /// <summary>The answer to a criterion.</summary>
    public abstract string State(ObservedState state);

    /// <summary>The maker's document in brackets, with a blank before, to stand behind the limit.</summary>
    public string Beside(MakersLimits limits) => $" ({Document(limits)})";
}
