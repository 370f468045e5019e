using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Diameters;

/// <inheritdoc />
internal sealed class French : DiameterPhrases
{
    public override string NoTolerance =>
        "Aucun diamètre nominal du fabricant avec tolérance n’est enregistré. Les moyennes servent à être comparées "
        + "entre elles\u00A0; aucune limite n’est tracée.";

    public override string Tolerance(string nominal, string tolerance, string low, string high, string source) =>
        $"Diamètre nominal du fabricant {nominal}\u00A0mm avec une tolérance de {tolerance}\u00A0% de part et d’autre, de "
        + $"{low} à {high}\u00A0mm inclus (en gris). Source\u00A0: {source}.";

    public override string NominalOnly(string nominal, string source) =>
        $"Diamètre nominal du fabricant {nominal}\u00A0mm (en tirets), aucune tolérance enregistrée\u00A0: aucune limite n’est "
        + $"tracée. Source\u00A0: {source}.";

    public override string PlotTitle(string item) => $"Diamètre moyen à chaque point de mesure le long de {item}";

    public override string TrendHeading => "diamètre de vérification en vérification";

    public override string TrendLegend =>
        "Points\u00A0: la plus petite moyenne de chaque vérification\u00A0; carrés\u00A0: la plus grande. Trait "
        + "plein\u00A0: moindres carrés, en gris leur bande de prédiction à 95\u00A0% (t de Student). Longs tirets\u00A0: "
        + "droite de Theil-Sen (Sen 1968), dont la pente est la médiane des pentes de toutes les paires et l’ordonnée à "
        + "l’origine la médiane de y moins pente × x.";

    public override string TrendWithoutLimits =>
        "Aucun diamètre nominal du fabricant avec tolérance n’est enregistré\u00A0: aucune limite n’est tracée.";

    public override string NothingProjected => "Rien n’est projeté, faute de limite du fabricant vers laquelle projeter.";

    public override string NoApproach =>
        "Ni la plus petite ni la plus grande moyenne ne va vers la limite du fabricant\u00A0; aucune date n’est proposée.";

    public override string TrendTitle(string item) =>
        $"Plus petit et plus grand diamètre moyen, mm, de {item} par jour de vérification, avec les limites du fabricant "
        + "et ce qui est projeté";

    public override string TrendLimits(string least, string most, string source) =>
        $"Tirets courts\u00A0: les limites du fabricant, {least} et {most}\u00A0mm. Source\u00A0: {source}.";

    public override string Proposal(LocalDate? on, bool thinning, string perYear, string limit, LocalDate? byBand, LocalDate? byLine) =>
        $"Date proposée avant laquelle cela pourrait devenir un danger\u00A0: {Printed.Day(on)}. La "
        + $"{(thinning ? "plus petite moyenne baisse" : "plus grande moyenne croît")} de {perYear}\u00A0mm par an (Theil-Sen) "
        + $"et atteindrait les {limit}\u00A0mm du fabricant {Either(thinning, byBand, byLine)}. Le jour le plus proche est "
        + "proposé, ramené à un jour entier. "
        + "C’est une proposition\u00A0: elle n’engage que lorsque le vérificateur l’inscrit parmi les défauts\u00A0; la "
        + "notice du fabricant et le jugement du vérificateur priment.";

    public override string AfterService(LocalDate? end) =>
        $" Elle est postérieure au dernier jour de service selon les limites enregistrées, le {Printed.Day(end)}, qui l’emporte.";

    public override string Millimetres(string number) => $"{number}\u00A0mm";

    public override string MeanAt(string mean, string position) => $"{mean}\u00A0mm à {position}\u00A0mm";

    public override string StandingOut(string places) =>
        $"Losange\u00A0: se détache du reste de la corde (z modifié supérieur à 3,5, Iglewicz et Hoaglin 1993)\u00A0: {places}.";

    public override string TooCloseToCall(string places) =>
        "Anneau\u00A0: dans la limite du fabricant, mais trop près pour trancher selon l’incertitude de la moyenne (JCGM "
        + $"100:2008, 95\u00A0%)\u00A0: {places}.";

    private static string Either(bool thinning, LocalDate? byBand, LocalDate? byLine)
    {
        var band = byBand is null
            ? null
            : $"le {Printed.Day(byBand)} selon la borne {(thinning ? "inférieure" : "supérieure")} de la bande de prédiction";
        var line = byLine is null ? null : $"le {Printed.Day(byLine)} selon la droite de Theil-Sen";
        return Printed.Join(" ou ", band, line);
    }
}
