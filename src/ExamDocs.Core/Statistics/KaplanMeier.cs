namespace ExamDocs.Core.Statistics;

/// <summary>What share of things is expected to be without the event at each age (Kaplan and Meier 1958).</summary>
/// <remarks>Things watched from a later age on join the number at risk after it. Ages count from 0.</remarks>
public sealed class KaplanMeier
{
    // A product of fractions can miss one half by rounding.
    private const double Rounding = 1e-9;

    /// <exception cref="ArgumentOutOfRangeException">There are no lifetimes.</exception>
    public KaplanMeier(IReadOnlyList<Lifetime> lifetimes)
    {
        ArgumentNullException.ThrowIfNull(lifetimes);
        if (lifetimes.Count == 0)
            throw new ArgumentOutOfRangeException(nameof(lifetimes), "there are no lifetimes");
        Things = lifetimes.Count;
        Censored = [.. lifetimes.Where(l => !l.IsEvent).Select(l => l.Time).Order()];
        var (steps, share, sum) = (new List<SurvivalStep>(), 1.0, 0.0);
        // One watched only from the very age of its event on tells nothing: others of its kind would not be known.
        foreach (var (age, events) in lifetimes.Where(l => l.IsEvent && l.IsAtRiskAt(l.Time)).CountBy(l => l.Time).OrderBy(e => e.Key))
        {
            var atRisk = lifetimes.Count(l => l.IsAtRiskAt(age));
            share *= (double)(atRisk - events) / atRisk;
            sum += events / ((double)atRisk * (atRisk - events));
            steps.Add(new SurvivalStep(age, atRisk, events, share, sum));
            if (atRisk == events)
                break;
        }
        Steps = steps;
    }

    /// <summary>How many things there are.</summary>
    public int Things { get; }

    public int Events => Steps.Sum(s => s.Events);

    /// <summary>One for each age with an event, the youngest first; empty where there was none.</summary>
    public IReadOnlyList<SurvivalStep> Steps { get; }

    /// <summary>The ages at which watching ended without the event.</summary>
    public IReadOnlyList<double> Censored { get; }

    /// <summary>The first age at which half or fewer are left; null where more than half are left to the end.</summary>
    public double? Median => FirstAtHalf(s => s.Share);

    /// <summary>
    /// The first ages at which the lower and the upper end of the interval reach one half (Brookmeyer and Crowley 1982); an end is null
    /// where it never does.
    /// </summary>
    public (double? Low, double? High) MedianInterval => (FirstAtHalf(s => s.Interval?.Low ?? 0), FirstAtHalf(s => s.Interval?.High));

    /// <summary>The share left at an age: 1 before the first event.</summary>
    public double At(double age) => Steps.LastOrDefault(s => s.Age <= age)?.Share ?? 1;

    private double? FirstAtHalf(Func<SurvivalStep, double?> of) => Steps.FirstOrDefault(s => of(s) <= 0.5 + Rounding)?.Age;
}

/// <summary>The share left after the events of one age.</summary>
public sealed record SurvivalStep
{
    private readonly double _sum;

    /// <param name="age">At which the events came.</param>
    /// <param name="atRisk">How many were watched and without the event just before.</param>
    /// <param name="events">How many events came at this age.</param>
    /// <param name="share">Left after them.</param>
    /// <param name="sum">Greenwood's sum up to this age: events / (at risk × left).</param>
    internal SurvivalStep(double age, int atRisk, int events, double share, double sum) =>
        (Age, AtRisk, Events, Share, _sum) = (age, atRisk, events, share, sum);

    public double Age { get; }

    public int AtRisk { get; }

    public int Events { get; }

    public double Share { get; }

    /// <summary>Greenwood's standard error of the share; null where none is left: it is not defined there.</summary>
    public double? StandardError => Share > 0 ? Share * Math.Sqrt(_sum) : null;

    /// <summary>
    /// The 95 % interval from log(-log(share)), which stays between 0 and 1 (Kalbfleisch and Prentice); null where none is left.
    /// </summary>
    public ConfidenceInterval? Interval
    {
        get
        {
            if (Share <= 0)
                return null;
            var half = ConfidenceInterval.Z * Math.Sqrt(_sum) / Math.Abs(Math.Log(Share));
            return new ConfidenceInterval(Math.Pow(Share, Math.Exp(half)), Math.Pow(Share, Math.Exp(-half)));
        }
    }
}
