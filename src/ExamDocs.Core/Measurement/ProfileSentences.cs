using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Measurement;

/// <summary>Puts a profile into the sentences that an examiner argues with.</summary>
internal static class ProfileSentences
{
    private const string Practice = "common practice, no source";
    private const string Gum = "JCGM 100:2008";
    private const string Robust = "modified z above 3.5, Iglewicz and Hoaglin 1993";

    public static IEnumerable<MeasurementSentence> Of(MeasuredProfile profile)
    {
        if (profile is not { Thinnest: { } thinnest, Thickest: { } thickest })
            return [];
        return new[]
        {
            Measured(profile, thinnest, thickest),
            AgainstLimits(profile),
            TooClose(profile),
            Outlying(profile),
            Run(profile),
            Oval(profile),
            Middle(profile),
            SinceFirst(profile),
        }.OfType<MeasurementSentence>();
    }

    private static MeasurementSentence Measured(MeasuredProfile profile, ProfileStation thinnest, ProfileStation thickest) => new(
        string.Create(CultureInfo.InvariantCulture,
            $"mean diameters at {profile.Stations.Count(s => s.Mean is not null)} stations: the smallest {Mean(thinnest)}, the largest {Mean(thickest)}, median {Mm(profile.MedianMm!.Value)}; the calliper's step is taken to be {Say.Number(profile.ResolutionMm)} mm, as the readings were typed"), Gum);

    private static MeasurementSentence AgainstLimits(MeasuredProfile profile)
    {
        if (profile is not { Band: { } band, Limits: { } limits })
            return new("the maker's nominal diameter or tolerance is not recorded: the rope is compared with itself only, and no limit is set", Practice);
        var outside = profile.Stations.Where(s => s.IsOutside).ToList();
        var range = $"{Say.Number(band.Least)} to {Say.Number(band.Most)} mm";
        return new(outside.Count == 0
            ? $"every mean is inside the maker's {range}"
            : $"outside the maker's {range}: {string.Join(", ", outside.Select(Mean))}", LimitsSourceText.Of(limits));
    }

    private static MeasurementSentence? TooClose(MeasuredProfile profile)
    {
        var close = profile.Stations.Where(s => s.IsTooCloseToCall).ToList();
        return close.Count == 0 ? null : new($"too close to the maker's limit to call: {string.Join(", ", close.Select(WithUncertainty))}", $"expanded uncertainty, 95 %, {Gum}");
    }

    private static MeasurementSentence? Outlying(MeasuredProfile profile)
    {
        var outlying = profile.Stations.Where(s => s.StandsOut).ToList();
        return outlying.Count == 0 ? null : new($"standing out from the rest: {string.Join(", ", outlying.Select(Mean))}", Robust);
    }

    private static MeasurementSentence? Run(MeasuredProfile profile) => profile.LongestRun is not { } run ? null : new(
        string.Create(CultureInfo.InvariantCulture,
            $"{run.Stations} neighbouring stations from {Say.Number(run.FromMm)} to {Say.Number(run.ToMm)} mm are all {(run.IsThinner ? "thinner" : "thicker")} than the median by more than the uncertainty of their means"),
        $"{Practice}; uncertainty by {Gum}");

    private static MeasurementSentence? Oval(MeasuredProfile profile) => profile.MostOval is not { OvalityMm: > 0 } oval ? null : new(
        $"readings at one place differ by up to {Say.Number(oval.OvalityMm.Value)} mm, {Place(oval)}", Practice);

    private static MeasurementSentence? Middle(MeasuredProfile profile) => profile.MiddleAgainstEnds is not { } parts ? null : new(
        StationPlace.IsNothing(parts.DifferenceMm)
            ? "the middle half of the length measures the same as the two outer quarters"
            : $"the middle half of the length is {Mm(Math.Abs(parts.DifferenceMm))} {Thinner(parts.DifferenceMm)} than the two outer quarters, by position alone", Practice);

    private static MeasurementSentence? SinceFirst(MeasuredProfile profile)
    {
        if (profile.SinceFirst is not { } change)
            return null;
        if (change.Stations.Count == 0)
            return new($"no place measured {Say.Day(change.FirstOn)} was measured again: the change since then cannot be told", Practice);
        var places = new[] { change.MostThinned, change.MostThickened }.OfType<StationChange>().Where(s => !StationPlace.IsNothing(s.DifferenceMm))
            .Select(s => $"{Mm(Math.Abs(s.DifferenceMm))} {Thinner(s.DifferenceMm)} at {Say.Number(s.PositionMm)} mm").ToList();
        return new(places.Count == 0
            ? $"no place has changed since the first profile recorded, {Say.Day(change.FirstOn)}"
            : $"since the first profile recorded, {Say.Day(change.FirstOn)}, it has become at most {string.Join(" and ", places)}", Practice);
    }

    private static string Mean(ProfileStation station) => $"{Mm(station.MeanMm!.Value)} {Place(station)}";

    private static string WithUncertainty(ProfileStation station) =>
        $"{Mm(station.MeanMm!.Value)} {StationPlace.Uncertainty(station.Uncertainty!)} {Place(station)}";

    private static string Place(ProfileStation station) => StationPlace.Of(station.PositionMm);

    private static string Mm(double mm) => StationPlace.Mm(mm);

    private static string Thinner(double difference) => difference < 0 ? "thinner" : "thicker";
}
