using ExamDocs.Core.Measurement;

namespace ExamDocs.Core.Sentences;

/// <summary>Puts a profile into sentences for the argument for service.</summary>
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

    private static MeasurementSentence Measured(MeasuredProfile profile, ProfileStation thinnest, ProfileStation thickest) =>
        new(
            w =>
                w.Diameters.Measured(
                    profile.Stations.Count(s => s.Mean is not null),
                    thinnest,
                    thickest,
                    profile.MedianMm!.Value,
                    profile.ResolutionMm
                ),
            Gum
        );

    private static MeasurementSentence AgainstLimits(MeasuredProfile profile)
    {
        if (profile is not { Band: { } band, Limits: { } limits })
            return new(w => w.Diameters.ComparedWithItself, Practice);
        var outside = profile.Stations.Where(s => s.IsOutside).ToList();
        return new(
            w => outside.Count == 0 ? w.Diameters.EveryMeanInside(band) : w.Diameters.MeansOutside(band, outside),
            LimitsSourceText.Of(limits)
        );
    }

    private static MeasurementSentence? TooClose(MeasuredProfile profile)
    {
        var close = profile.Stations.Where(s => s.IsTooCloseToCall).ToList();
        return close.Count == 0 ? null : new(w => w.Diameters.TooCloseToCall(close), $"expanded uncertainty, 95 %, {Gum}");
    }

    private static MeasurementSentence? Outlying(MeasuredProfile profile)
    {
        var outlying = profile.Stations.Where(s => s.StandsOut).ToList();
        return outlying.Count == 0 ? null : new(w => w.Diameters.StandingOut(outlying), Robust);
    }

    private static MeasurementSentence? Run(MeasuredProfile profile) =>
        profile.LongestRun is not { } run ? null : new(w => w.Diameters.NeighboursDiffer(run), $"{Practice}; uncertainty by {Gum}");

    private static MeasurementSentence? Oval(MeasuredProfile profile) =>
        profile.MostOval is not { OvalityMm: { } oval and > 0, PositionMm: var at }
            ? null
            : new(w => w.Diameters.ReadingsDiffer(oval, at), Practice);

    private static MeasurementSentence? Middle(MeasuredProfile profile) =>
        profile.MiddleAgainstEnds is not { DifferenceMm: var by }
            ? null
            : new(w => StationPlace.IsNothing(by) ? w.Diameters.MiddleIsAsEnds : w.Diameters.MiddleDiffers(by), Practice);

    private static MeasurementSentence? SinceFirst(MeasuredProfile profile)
    {
        if (profile.SinceFirst is not { } change)
            return null;
        if (change.Stations.Count == 0)
            return new(w => w.Diameters.NothingMeasuredAgain(change.FirstOn), Practice);
        var most = new[] { change.MostThinned, change.MostThickened }
            .OfType<StationChange>()
            .Where(s => !StationPlace.IsNothing(s.DifferenceMm))
            .ToList();
        return new(
            w => most.Count == 0 ? w.Diameters.NothingHasChanged(change.FirstOn) : w.Diameters.HasChanged(change.FirstOn, most),
            Practice
        );
    }
}
