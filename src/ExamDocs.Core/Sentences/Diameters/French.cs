using ExamDocs.Core.Measurement;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Diameters;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class French(BasicWords words) : DiameterSentences
{
    public override string Measured(int stations, ProfileStation smallest, ProfileStation largest, double medianMm, decimal stepMm) =>
        $"diamètres moyens à {Say.Count(stations)} points\u00A0: le plus petit {Mean(smallest)}, le plus grand "
        + $"{Mean(largest)}, médiane {words.Millimetres(medianMm)}\u00A0; le pas du pied à coulisse est pris à "
        + $"{words.Number(stepMm)}\u00A0mm, comme les mesures ont été saisies";

    public override string ComparedWithItself =>
        "le diamètre nominal ou la tolérance du fabricant n’est pas renseigné\u00A0: la corde n’est comparée qu’à "
        + "elle-même, et aucune limite n’est fixée";

    public override string EveryMeanInside(DiameterBand band) => $"chaque moyenne est dans les limites du fabricant, {Range(band)}";

    public override string MeansOutside(DiameterBand band, IReadOnlyList<ProfileStation> outside) =>
        $"hors des limites du fabricant, {Range(band)}\u00A0: {string.Join(", ", outside.Select(Mean))}";

    public override string TooCloseToCall(IReadOnlyList<ProfileStation> close) =>
        $"trop près de la limite du fabricant pour trancher\u00A0: {string.Join(", ", close.Select(MeanAndUncertainty))}";

    public override string StandingOut(IReadOnlyList<ProfileStation> outlying) =>
        $"se détachent du reste\u00A0: {string.Join(", ", outlying.Select(Mean))}";

    public override string NeighboursDiffer(StationRun run) =>
        $"{Say.Count(run.Stations)} points voisins de {words.Number(run.FromMm)} à {words.Number(run.ToMm)}\u00A0mm sont tous "
        + $"{(run.IsThinner ? "plus minces" : "plus épais")} que la médiane de plus que l’incertitude de leurs moyennes";

    public override string ReadingsDiffer(decimal byMm, decimal? positionMm) =>
        $"les mesures d’un même endroit diffèrent de {words.Number(byMm)}\u00A0mm au plus, {words.Place(positionMm)}";

    public override string MiddleIsAsEnds => "la moitié centrale de la longueur mesure autant que les deux quarts extérieurs";

    public override string MiddleDiffers(double byMm) =>
        $"la moitié centrale de la longueur est {Change(byMm)} que les deux quarts extérieurs, d’après la seule position";

    public override string NothingMeasuredAgain(LocalDate first) =>
        $"aucun endroit mesuré le {words.Day(first)} n’a été mesuré de nouveau\u00A0: le changement depuis ne peut être dit";

    public override string NothingHasChanged(LocalDate first) =>
        $"aucun endroit n’a changé depuis le premier profil enregistré, le {words.Day(first)}";

    public override string HasChanged(LocalDate first, IReadOnlyList<StationChange> most) =>
        $"depuis le premier profil enregistré, le {words.Day(first)}, la corde " + string.Join(" et ", most.Select(Grown));

    public override string Trend(DiameterTrend trend) =>
        $"sur {Say.Count(trend.Smallest.Points.Count)} vérifications depuis le {words.Day(trend.Smallest.Points[0].On)}, la "
        + $"plus petite moyenne {Slope(trend.Smallest)}, la plus grande {Slope(trend.Largest)}";

    public override string Projected(TrendSeries series)
    {
        var limit = $"la limite du fabricant, {words.Number(series.LimitMm!.Value)}\u00A0mm,";
        var how = series.IsReachedNow
            ? $"et, avec la dispersion des vérifications, {limit} est déjà à sa portée"
            : $"et atteindrait {limit} d’ici au {words.Day(series.Reaches!.Value)}";
        return $"la {(series.IsSmallest ? "plus petite" : "plus grande")} moyenne {Slope(series)} {how}\u00A0: date proposée "
            + $"avant laquelle cela pourrait devenir un danger, le {words.Day(series.Reaches!.Value)}";
    }

    public override string AfterService(LocalDate end) => $"c’est après le dernier jour de son service, le {words.Day(end)}, qui l’emporte";

    public override string ItIsAProposal =>
        "c’est une proposition\u00A0: elle n’engage que lorsque le vérificateur l’inscrit parmi les défauts, et ne "
        + "change aucun résultat";

    public override string NeitherApproaches => "aucune des deux ne va vers la limite du fabricant";

    private string Mean(ProfileStation station) => $"{words.Millimetres(station.MeanMm!.Value)} {words.Place(station.PositionMm)}";

    private string MeanAndUncertainty(ProfileStation station) =>
        $"{words.Millimetres(station.MeanMm!.Value)} {words.Uncertainty(station.Uncertainty!)} {words.Place(station.PositionMm)}";

    private string Range(DiameterBand band) => $"de {words.Number(band.Least)} à {words.Number(band.Most)}\u00A0mm";

    private string Change(double byMm) => $"{(byMm < 0 ? "plus mince" : "plus épaisse")} de {words.Millimetres(Math.Abs(byMm))}";

    private string Grown(StationChange change) =>
        $"s’est {(change.DifferenceMm < 0 ? "amincie" : "épaissie")} de {words.Millimetres(Math.Abs(change.DifferenceMm))} au plus, à "
        + $"{words.Number(change.PositionMm)}\u00A0mm";

    private static string Slope(TrendSeries series) =>
        StationPlace.IsNothing(series.MmPerYear)
            ? "reste égale"
            : $"{(series.MmPerYear < 0 ? "baisse" : "croît")} de "
                + $"{Notation.French.Number(Math.Abs(series.MmPerYear), "0.00")}\u00A0mm par an";
}
