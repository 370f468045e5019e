using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Diameters;

/// <inheritdoc />
internal sealed class English : DiameterPhrases
{
    public override string NoTolerance =>
        "No maker's nominal diameter with a tolerance is recorded. The means are shown to be compared with one another; "
        + "no limit is drawn.";

    public override string Tolerance(string nominal, string tolerance, string low, string high, string source) =>
        $"Maker's nominal {nominal}\u00A0mm with a tolerance of {tolerance}\u00A0% to either side, {low} to {high}\u00A0mm inclusive "
        + $"(shaded). Source: {source}.";

    public override string NominalOnly(string nominal, string source) =>
        $"Maker's nominal {nominal}\u00A0mm (dashed), no tolerance recorded: no limit is drawn. Source: {source}.";

    public override string PlotTitle(string item) => $"Mean diameter at each station along {item}";

    public override string TrendHeading => "diameter from examination to examination";

    public override string TrendLegend =>
        "Dots: the smallest station mean of each examination; squares: the largest. Solid line: least squares, shaded "
        + "with its 95 % prediction band (Student's t). Long dashes: Theil-Sen line (Sen 1968), its slope the median of "
        + "the slopes between all pairs, its intercept the median of y less slope × x.";

    public override string TrendWithoutLimits => "No maker's nominal diameter with a tolerance is recorded: no limit is drawn.";

    public override string NothingProjected => "Nothing is projected, as there is no maker's limit to project to.";

    public override string NoApproach => "Neither the smallest nor the largest mean is heading for the maker's limit; no time is proposed.";

    public override string TrendTitle(string item) =>
        $"Smallest and largest mean diameter, mm, of {item} by day of examination, with the maker's limits and what is projected";

    public override string TrendLimits(string least, string most, string source) =>
        $"Short dashes: the maker's limits, {least} and {most}\u00A0mm. Source: {source}.";

    public override string Proposal(LocalDate? on, bool thinning, string perYear, string limit, LocalDate? byBand, LocalDate? byLine) =>
        $"Proposed time by which it could become a danger: {Printed.Day(on)}. The {(thinning ? "smallest" : "largest")} "
        + $"mean {(thinning ? "falls" : "grows")} by {perYear}\u00A0mm a year (Theil-Sen) "
        + $"and would reach the maker's {limit}\u00A0mm {Either(thinning, byBand, byLine)}. The earlier day is proposed, cut to "
        + "a whole day. "
        + "It is a proposal: it binds only when the examiner enters it among the defects, and the maker's instructions and "
        + "the examiner's judgement come first.";

    public override string AfterService(LocalDate? end) =>
        $" It lies after the last day of service by the limits recorded, {Printed.Day(end)}, which governs.";

    public override string Millimetres(string number) => $"{number}\u00A0mm";

    public override string MeanAt(string mean, string position) => $"{mean}\u00A0mm at {position}\u00A0mm";

    public override string StandingOut(string places) =>
        $"Diamond: stands out from the rest of the rope (modified z above 3.5, Iglewicz and Hoaglin 1993): {places}.";

    public override string TooCloseToCall(string places) =>
        $"Ring: inside the maker's limit, but too close to call by the uncertainty of the mean (JCGM 100:2008, 95 %): {places}.";

    private static string Either(bool thinning, LocalDate? byBand, LocalDate? byLine)
    {
        var band = byBand is null ? null : $"{Printed.Day(byBand)} by the {(thinning ? "lower" : "upper")} bound of the prediction band";
        var line = byLine is null ? null : $"{Printed.Day(byLine)} by the Theil-Sen line";
        return $"on {Printed.Join(" or ", band, line)}";
    }
}
