using ExamDocs.Core.Measurement;
using NodaTime;

namespace ExamDocs.Core.Sentences.Diameters;

/// <summary>What the measured diameters show.</summary>
public abstract class DiameterSentences
{
    public abstract string Measured(int stations, ProfileStation smallest, ProfileStation largest, double medianMm, decimal stepMm);

    public abstract string ComparedWithItself { get; }

    public abstract string EveryMeanInside(DiameterBand band);

    public abstract string MeansOutside(DiameterBand band, IReadOnlyList<ProfileStation> outside);

    public abstract string TooCloseToCall(IReadOnlyList<ProfileStation> close);

    public abstract string StandingOut(IReadOnlyList<ProfileStation> outlying);

    public abstract string NeighboursDiffer(StationRun run);

    public abstract string ReadingsDiffer(decimal byMm, decimal? positionMm);

    public abstract string MiddleIsAsEnds { get; }

    public abstract string MiddleDiffers(double byMm);

    public abstract string NothingMeasuredAgain(LocalDate first);

    public abstract string NothingHasChanged(LocalDate first);

    public abstract string HasChanged(LocalDate first, IReadOnlyList<StationChange> most);

    public abstract string Trend(DiameterTrend trend);

    public abstract string Projected(TrendSeries series);

    public abstract string AfterService(LocalDate end);

    public abstract string ItIsAProposal { get; }

    public abstract string NeitherApproaches { get; }
}
