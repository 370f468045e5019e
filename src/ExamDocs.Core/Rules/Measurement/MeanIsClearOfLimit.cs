using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Measurement;

/// <summary>For means inside the limit that may be outside it; W7 withdraws for those outside.</summary>
public sealed class MeanIsClearOfLimit : ExaminationRule
{
    public MeanIsClearOfLimit()
        : base(
            new RuleInfo(
                "MEA005",
                Severity.Warning,
                "Every mean diameter is clear of the maker's limit by its uncertainty",
                "A mean just inside the limit may be outside it by a better measurement.",
                $"Measure the place again, more often or with a finer calliper; where it stays close, enter a doubt.",
                "JCGM 100:2008 4.2.3, 4.2.4, F.2.2.1, G.4 (expanded uncertainty, 95 %)"
            )
        ) =>
        Each(e =>
            MeasuredNow.Of(e) is { Profile: { Band: { } band } profile }
                ? profile.Stations.Where(s => s.IsTooCloseToCall).Select(s => new Fault(MeasuredNow.Member(s), Words(s, band)))
                : []
        );

    private static Message Words(ProfileStation station, DiameterBand band) =>
        $"mean diameter {Spoken.Millimetres(station.MeanMm!.Value)} {Spoken.Uncertainty(station.Uncertainty!)} "
        + $"{Spoken.Place(station.PositionMm)} is too close to the maker's limits, {band.Least} to {band.Most} mm, to tell on which "
        + $"side it lies";
}
