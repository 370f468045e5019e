using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences.Basics;

/// <summary>The words that sentences are made of: days, numbers, places, documents and answers.</summary>
public abstract class BasicWords
{
    /// <summary>The day with its month as a word.</summary>
    public abstract string Day(LocalDate day);

    /// <summary>The date at the precision recorded, with the preposition: on 2 May 2024, in May 2024, in 2024.</summary>
    public abstract string When(PartialDate date);

    /// <summary>The number with the decimals typed, without zeros at the end.</summary>
    public abstract string Number(decimal number);

    /// <summary>The length with two or three decimals and the unit.</summary>
    public abstract string Millimetres(double mm);

    /// <summary>The expanded uncertainty with ± and the unit, rounded up.</summary>
    public abstract string Uncertainty(MeanUncertainty uncertainty);

    /// <summary>Where along the rope, with the preposition: at 180 mm.</summary>
    public abstract string Place(decimal? positionMm);

    /// <summary>The criterion in words; null where it is not named.</summary>
    public abstract string Criterion(string? id);

    /// <summary>Printed in place of the id of an item that has none.</summary>
    public abstract string ItemWithoutId { get; }

    /// <summary>The maker's document with revision and page.</summary>
    public abstract string Document(MakersLimits limits);

    /// <summary>A message in this language.</summary>
    public abstract string Said(Message message);

    /// <summary>The answer to a criterion.</summary>
    public abstract string State(ObservedState state);

    /// <summary>The maker's document in brackets with a blank before them, to be put behind the limit.</summary>
    public string Beside(MakersLimits limits) => $" ({Document(limits)})";
}
