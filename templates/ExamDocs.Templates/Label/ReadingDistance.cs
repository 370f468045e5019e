using System.Globalization;

namespace ExamDocs.Templates.Label;

/// <summary>
/// From how far quarantine and hold labels are to be read: h = l / Z, where h is the height of what is read, l the
/// distance and Z a factor that depends on the light and on what is read (ISO 3864-1:2011 relates the two in its annex A).
/// </summary>
public sealed record ReadingDistance
{
    /// <summary>The smallest scale at which a stock prints a label.</summary>
    public const decimal SmallestScale = 0.95m;

    /// <summary>Capitals of Noto Sans, as a part of the size of type; read from the font.</summary>
    internal const double Capitals = 0.714;

    // The sign is never smaller than this, whatever the setting: 37.5 mm at 95 %, rounded up.
    private const decimal SmallestSignMm = 40;

    // A larger sign leaves no room for the signal word beside it.
    private const decimal LargestSignMm = 56;

    // Letters of a signal word: Z = 300, German workplace rule ASR A1.3, from memory.
    private const decimal SignalFactor = 300;

    // Five minutes of arc, which is what good eyesight resolves (from memory): 1 / tan 5' (computed).
    private const decimal TextFactor = 687.5m;

    // The signal word of the hold label is always 15.2 mm; that of the quarantine label depends on the sign beside it.
    private const double HoldSignalMm = 15.2;

    /// <param name="metres">Distance l; 1.5 by common practice, no source (51 FR 33251 asks 5 ft, 1.52 m, of the signal word
    /// alone).</param>
    /// <param name="signFactor">Z of the prohibition sign; 40 by the German workplace rule ASR A1.3, from memory.</param>
    /// <exception cref="ArgumentException">A label of 100 x 150 mm cannot be read from there.</exception>
    public ReadingDistance(decimal metres = 1.5m, decimal signFactor = 40)
    {
        if (Objection(metres, signFactor) is { } objection)
            throw new ArgumentException(objection, nameof(metres));
        (Metres, SignFactor) = (metres, signFactor);
    }

    public static ReadingDistance Default { get; } = new();

    public decimal Metres { get; }

    public decimal SignFactor { get; }

    /// <summary>Diameter of the prohibition sign, millimetres: at the smallest scale it is still l / Z.</summary>
    public decimal SignMm => Math.Max(SmallestSignMm, NeededSignMm(Metres, SignFactor));

    /// <summary>Size of type of the signal word beside the sign, millimetres.</summary>
    public double SignalMm => SignalBeside(SignMm);

    /// <summary>Height that the capitals of the other words must have to be read from there, millimetres.</summary>
    public double CapitalsMm => (double)(Metres * 1000 / TextFactor);

    /// <summary>Whether capitals of this size of type, at the smallest scale, are read from there as a signal word.</summary>
    public bool IsSignalRead(double fontMm) => fontMm * Capitals * (double)SmallestScale >= (double)(Metres * 1000 / SignalFactor);

    /// <summary>From how far words of this size of type are read at the smallest scale, metres.</summary>
    public static double LegibleFrom(double fontMm) => fontMm * Capitals * (double)(SmallestScale * TextFactor) / 1000;

    /// <summary>Why a label cannot be read from there, in one sentence without a full stop; null where it can.</summary>
    public static string? Objection(decimal metres, decimal signFactor)
    {
        if (metres is < 0.3m or > 20 || signFactor is < 5 or > 200)
            return "the distance is from 0.3 to 20 m, and the factor of the sign from 5 to 200";
        var sign = NeededSignMm(metres, signFactor);
        if (sign > LargestSignMm)
            return string.Create(
                CultureInfo.InvariantCulture,
                $"a sign of {sign} mm, for {metres} m and Z = {signFactor}, does not fit on a label of 100 x 150 mm; "
                    + $"{LargestSignMm} mm does"
            );
        var signal = Math.Min(SignalBeside(Math.Max(SmallestSignMm, sign)), HoldSignalMm) * Capitals * (double)SmallestScale;
        return (double)(metres * 1000 / SignalFactor) > signal
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"the signal word of a label of 100 x 150 mm is not read from {metres} m; at most from "
                    + $"{Math.Floor(signal * (double)SignalFactor / 100) / 10} m"
            )
            : null;
    }

    private static decimal NeededSignMm(decimal metres, decimal signFactor) => Math.Ceiling(metres * 1000 / signFactor / SmallestScale);

    // The widest of the three words is 2.19 em; sign, gap and word share 84 mm.
    private static double SignalBeside(decimal signMm) => Math.Min(18.6, (84 - (double)signMm) / 2.366);
}
