namespace ExamDocs.Core.Measurement;

/// <summary>
/// The step of the calliper, inferred from the readings as typed, because nobody records it. It is one unit of the finest decimal
/// digit typed: 11.0 means 0.1 mm. Where at least six readings all end in 0 or 5, and one of them in 5, it is five units, as on a
/// vernier of 0.05 mm.
/// </summary>
public static class CalliperResolution
{
    /// <summary>Hand callipers show no more decimals (common practice, no source); more come from typing or calculating.</summary>
    private const int FinestScale = 2;

    /// <summary>Six readings end in 0 or 5 by chance alone once in 15,625 times.</summary>
    private const int EnoughToTell = 6;

    /// <summary>Millimetres; more than zero.</summary>
    /// <param name="readingsMm">All readings of one profile, millimetres.</param>
    public static decimal InferFrom(IReadOnlyCollection<decimal> readingsMm)
    {
        var scale = readingsMm.Count == 0 ? 0 : Math.Min((int)readingsMm.Max(r => r.Scale), FinestScale);
        var digit = new decimal(1, 0, 0, isNegative: false, (byte)scale);
        var five = 5 * digit;
        return readingsMm.Count >= EnoughToTell && readingsMm.All(r => r % five == 0) && readingsMm.Any(r => r % (2 * five) != 0)
            ? five
            : digit;
    }
}
