using ExamDocs.Core.Measurement;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Diameters;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class German(BasicWords words) : DiameterSentences
{
    public override string Measured(int stations, ProfileStation smallest, ProfileStation largest, double medianMm, decimal stepMm) =>
        $"mittlere Durchmesser an {Say.Count(stations)} Messstellen: der kleinste {Mean(smallest)}, der größte "
        + $"{Mean(largest)}, Median {words.Millimetres(medianMm)}; als Schritt des Messschiebers gelten "
        + $"{words.Number(stepMm)}\u00A0mm, wie "
        + "die Werte eingetragen sind";

    public override string ComparedWithItself =>
        "Nenndurchmesser oder Toleranz des Herstellers sind nicht erfasst: das Seil wird nur mit sich selbst verglichen, "
        + "und keine Grenze ist gesetzt";

    public override string EveryMeanInside(DiameterBand band) =>
        $"jeder Mittelwert liegt innerhalb der Grenzen des Herstellers, {Range(band)}";

    public override string MeansOutside(DiameterBand band, IReadOnlyList<ProfileStation> outside) =>
        $"außerhalb der Grenzen des Herstellers, {Range(band)}: {string.Join(", ", outside.Select(Mean))}";

    public override string TooCloseToCall(IReadOnlyList<ProfileStation> close) =>
        $"zu nahe an der Grenze des Herstellers, um zu entscheiden: {string.Join(", ", close.Select(MeanAndUncertainty))}";

    public override string StandingOut(IReadOnlyList<ProfileStation> outlying) =>
        $"vom Übrigen abgehoben: {string.Join(", ", outlying.Select(Mean))}";

    public override string NeighboursDiffer(StationRun run) =>
        $"{Say.Count(run.Stations)} benachbarte Messstellen von {words.Number(run.FromMm)} bis {words.Number(run.ToMm)}\u00A0mm sind "
        + $"alle um mehr als die Unsicherheit ihrer Mittelwerte {(run.IsThinner ? "dünner" : "dicker")} als der Median";

    public override string ReadingsDiffer(decimal byMm, decimal? positionMm) =>
        $"Messwerte an einer Stelle weichen um bis zu {words.Number(byMm)}\u00A0mm voneinander ab, {words.Place(positionMm)}";

    public override string MiddleIsAsEnds => "die mittlere Hälfte der Länge misst so viel wie die beiden äußeren Viertel";

    public override string MiddleDiffers(double byMm) =>
        $"die mittlere Hälfte der Länge ist {Change(byMm)} als die beiden äußeren Viertel, allein nach der Lage";

    public override string NothingMeasuredAgain(LocalDate first) =>
        $"keine am {words.Day(first)} gemessene Stelle wurde wieder gemessen: die Änderung seither lässt sich nicht sagen";

    public override string NothingHasChanged(LocalDate first) =>
        $"keine Stelle hat sich seit dem ersten aufgezeichneten Profil, {words.Day(first)}, geändert";

    public override string HasChanged(LocalDate first, IReadOnlyList<StationChange> most) =>
        $"seit dem ersten aufgezeichneten Profil, {words.Day(first)}, höchstens "
        + $"{string.Join(" und ", most.Select(s => $"{Change(s.DifferenceMm)} bei {words.Number(s.PositionMm)}\u00A0mm"))}";

    public override string Trend(DiameterTrend trend) =>
        $"über {Say.Count(trend.Smallest.Points.Count)} Prüfungen seit {words.Day(trend.Smallest.Points[0].On)}: der "
        + $"kleinste Mittelwert {Slope(trend.Smallest)}, der größte {Slope(trend.Largest)}";

    public override string Projected(TrendSeries series)
    {
        var limit = $"{words.Number(series.LimitMm!.Value)}\u00A0mm";
        var how = series.IsReachedNow
            ? $"und die Grenze des Herstellers, {limit}, ist bei der Streuung der Prüfungen schon in Reichweite"
            : $"und würde die Grenze des Herstellers, {limit}, bis {words.Day(series.Reaches!.Value)} erreichen";
        return $"der {(series.IsSmallest ? "kleinste" : "größte")} Mittelwert {Slope(series)} {how}: vorgeschlagener Zeitpunkt, "
            + $"bis zu dem es eine Gefahr werden könnte, {words.Day(series.Reaches!.Value)}";
    }

    public override string AfterService(LocalDate end) => $"das liegt nach dem letzten Gebrauchstag, {words.Day(end)}, der maßgebend ist";

    public override string ItIsAProposal =>
        "es ist ein Vorschlag: er bindet erst, wenn der Prüfer ihn unter den Mängeln einträgt, und ändert kein Ergebnis";

    public override string NeitherApproaches => "keiner von beiden läuft auf die Grenze des Herstellers zu";

    private string Mean(ProfileStation station) => $"{words.Millimetres(station.MeanMm!.Value)} {words.Place(station.PositionMm)}";

    private string MeanAndUncertainty(ProfileStation station) =>
        $"{words.Millimetres(station.MeanMm!.Value)} {words.Uncertainty(station.Uncertainty!)} {words.Place(station.PositionMm)}";

    private string Range(DiameterBand band) => $"{words.Number(band.Least)} bis {words.Number(band.Most)}\u00A0mm";

    private string Change(double byMm) => $"{words.Millimetres(Math.Abs(byMm))} {(byMm < 0 ? "dünner" : "dicker")}";

    private static string Slope(TrendSeries series) =>
        StationPlace.IsNothing(series.MmPerYear)
            ? "bleibt gleich"
            : $"{(series.MmPerYear < 0 ? "fällt" : "wächst")} um "
                + $"{Notation.German.Number(Math.Abs(series.MmPerYear), "0.00")}\u00A0mm im Jahr";
}
