using ExamDocs.Core.Measurement;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules;

/// <summary>Values in messages that each language writes in its own way.</summary>
internal static class Spoken
{
    public static Sentence Millimetres(double mm) => new(w => w.Words.Millimetres(mm));

    public static Sentence Uncertainty(MeanUncertainty uncertainty) => new(w => w.Words.Uncertainty(uncertainty));

    /// <summary>With its preposition: at 180 mm.</summary>
    public static Sentence Place(decimal? positionMm) => new(w => w.Words.Place(positionMm));

    public static Sentence Document(Records.MakersLimits limits) => new(w => w.Words.Document(limits));
}
