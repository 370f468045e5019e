using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Measurement;

/// <summary>Compares the rope only with itself, so it also warns where the maker gives no tolerance.</summary>
public sealed class NoStationStandsOut : ExaminationRule
{
    public NoStationStandsOut()
        : base(
            new RuleInfo(
                "MEA006",
                Severity.Warning,
                "No part of the rope is thinner or thicker than the rest of it",
                "A short thin or thick length tells of damage underneath, even where every mean is inside the maker's tolerance.",
                $"Feel and look at the place again, bend the rope there, and measure it again.",
                "Iglewicz and Hoaglin 1993 (modified z above 3.5); runs: common practice, no source"
            )
        ) => Each(e => MeasuredNow.Of(e) is { } measured ? Faults(measured.Profile) : []);

    private static IEnumerable<Fault> Faults(MeasuredProfile profile)
    {
        foreach (var station in profile.Stations.Where(s => s.StandsOut))
        {
            yield return new Fault(
                MeasuredNow.Member(station),
                $"mean diameter {Spoken.Millimetres(station.MeanMm!.Value)} {Spoken.Place(station.PositionMm)} stands out "
                    + $"from the median {Spoken.Millimetres(profile.MedianMm!.Value)} of the rope: feel the rope there again"
            );
        }
        if (profile.LongestRun is { } run && !profile.InOrder.Where(run.Holds).All(s => s.StandsOut))
        {
            yield return new Fault(
                "/diameters",
                run.IsThinner
                    ? (Message)(
                        $"{run.Stations} neighbouring stations are thinner than the median {Spoken.Millimetres(profile.MedianMm!.Value)} "
                        + $"of the rope: feel the rope again from {run.FromMm} to {run.ToMm} mm"
                    )
                    : $"{run.Stations} neighbouring stations are thicker than the median {Spoken.Millimetres(profile.MedianMm!.Value)} "
                        + $"of the rope: feel the rope again from {run.FromMm} to {run.ToMm} mm"
            );
        }
    }
}
