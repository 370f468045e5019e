using ExamDocs.Core.Statistics;
using ExamDocs.Templates.Shared;

namespace ExamDocs.Templates.Lessons;

/// <summary>Turns ages and shares into places on the plot of survival; plot units are tenths of a millimetre.</summary>
internal sealed class SurvivalScale
{
    public const int WidthMm = 150;
    public const int HeightMm = 62;
    public const double Width = WidthMm * PlotLengths.PerMm;
    public const double Height = HeightMm * PlotLengths.PerMm;
    public const double Left = PlotLengths.AxisFromLeft;
    public const double Right = Width - PlotLengths.AxisFromRight;
    public const double Top = PlotLengths.AxisFromTop;
    public const double Bottom = 540;
    public const double AgeLine = 576;
    public const double CurveWidth = 6;
    public const double RestWidth = 2;

    /// <summary>Our own choice: with fewer at risk the curve is drawn thin.</summary>
    public const int LeastAtRisk = 10;

    public const double TickHalf = 9;
    public const double HalfFigure = 9;

    /// <summary>Quarters of the height have a line.</summary>
    public const int Levels = 4;

    private const int YearMonths = 12;
    private const int MostLabels = 10;

    /// <param name="curves">What is plotted; one at least.</param>
    public SurvivalScale(IReadOnlyList<KaplanMeier> curves)
    {
        var last = curves.Max(End);
        LabelEvery = last <= MostLabels * YearMonths / 2.0 ? YearMonths / 2 : YearMonths * (1 + (int)(last / (MostLabels * YearMonths)));
        LastMonth = Math.Max(1, (int)Math.Ceiling(last / LabelEvery)) * LabelEvery;
    }

    public int LastMonth { get; }

    public int LabelEvery { get; }

    /// <summary>The last age that a curve says something of.</summary>
    public static double End(KaplanMeier curve) => curve.Steps.Select(s => s.Age).Concat(curve.Censored).DefaultIfEmpty(0).Max();

    public double X(double months) => Left + (months / LastMonth * (Right - Left));

    public static double Y(double share) => Bottom - (share * (Bottom - Top));

    /// <summary>
    /// The curve as steps, level to each event and then down, as far as enough are at risk: beyond, one bridge moves it far.
    /// </summary>
    public string Steps(KaplanMeier curve) =>
        $"M{Place(Left)} {Place(Y(1))}" + Steps(curve.Steps.TakeWhile(IsSure)) + $"H{Place(X(SureUntil(curve)))}";

    /// <summary>The rest of the curve; empty where there is none.</summary>
    public string Rest(KaplanMeier curve)
    {
        var rest = curve.Steps.SkipWhile(IsSure).ToList();
        return rest.Count == 0
            ? ""
            : $"M{Place(X(rest[0].Age))} {Place(Y(ShareBefore(curve, rest[0])))}{Steps(rest)}H{Place(X(End(curve)))}";
    }

    private string Steps(IEnumerable<SurvivalStep> steps) => string.Concat(steps.Select(s => $"H{Place(X(s.Age))}V{Place(Y(s.Share))}"));

    private static bool IsSure(SurvivalStep step) => step.AtRisk >= LeastAtRisk;

    private static double SureUntil(KaplanMeier curve) => curve.Steps.FirstOrDefault(s => !IsSure(s))?.Age ?? End(curve);

    private static double ShareBefore(KaplanMeier curve, SurvivalStep step) => curve.Steps.LastOrDefault(s => s.Age < step.Age)?.Share ?? 1;

    /// <summary>The interval as an area; it begins with the first event and ends where none is left.</summary>
    public string Band(KaplanMeier curve)
    {
        var known = curve.Steps.Where(s => s.Interval is not null).ToList();
        if (known.Count == 0)
            return "";
        var ends = known
            .Skip(1)
            .Select(s => s.Age)
            .Append(curve.Steps.Count > known.Count ? curve.Steps[known.Count].Age : End(curve))
            .ToList();
        var above = known.Zip(ends).Select(s => $"V{Place(Y(s.First.Interval!.High))}H{Place(X(s.Second))}");
        var below = known.Zip(ends).Reverse().Select(s => $"V{Place(Y(s.First.Interval!.Low))}H{Place(X(s.First.Age))}");
        return $"M{Place(X(known[0].Age))} {Place(Y(1))}{string.Concat(above)}{string.Concat(below)}z";
    }

    private static string Place(double value) => PlotMarks.Place(value);
}
