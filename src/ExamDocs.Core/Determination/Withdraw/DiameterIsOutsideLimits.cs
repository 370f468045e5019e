using ExamDocs.Core.Cases;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W7. The tolerance is inclusive: a mean on the limit is inside it.</summary>
internal sealed class DiameterIsOutsideLimits : IExaminationRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W7",
            "A mean diameter lies outside the maker's nominal and tolerance",
            "Thinning tells of core damage or wear, thickening of a parted or slipped core.",
            "the maker's instructions recorded in the limits"
        );

    public IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination) =>
        item.Limits.All.SelectMany(limits => Reasons(limits, examination));

    private IEnumerable<WithdrawalReason> Reasons(MakersLimits limits, ExaminationCase examination)
    {
        if (DiameterBand.Of(limits) is not { } band)
            yield break;
        foreach (var (station, _) in examination.Stations)
        {
            if (StationMean.Of(station) is { } mean && !band.Holds(mean))
                yield return new(Info.Because(w => w.Reasons.DiameterOutside(mean.Rounded, station.PositionMm, band, limits)));
        }
    }
}
