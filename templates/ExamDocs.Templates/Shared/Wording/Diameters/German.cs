using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Diameters;

/// <inheritdoc />
internal sealed class German : DiameterPhrases
{
    public override string NoTolerance =>
        "Ein Nenndurchmesser des Herstellers mit Toleranz ist nicht erfasst. Die Mittelwerte dienen dem Vergleich "
        + "untereinander; eine Grenze ist nicht eingezeichnet.";

    public override string Tolerance(string nominal, string tolerance, string low, string high, string source) =>
        $"Nenndurchmesser des Herstellers {nominal}\u00A0mm mit einer Toleranz von {tolerance}\u00A0% nach jeder Seite, {low} bis "
        + $"einschließlich {high}\u00A0mm (grau hinterlegt). Quelle: {source}.";

    public override string NominalOnly(string nominal, string source) =>
        $"Nenndurchmesser des Herstellers {nominal}\u00A0mm (gestrichelt), keine Toleranz aufgezeichnet: eine Grenze ist nicht "
        + $"eingezeichnet. Quelle: {source}.";

    public override string PlotTitle(string item) => $"Mittlerer Durchmesser an jeder Messstelle entlang von {item}";

    public override string TrendHeading => "Durchmesser von Prüfung zu Prüfung";

    public override string TrendLegend =>
        "Punkte: kleinster Stellenmittelwert jeder Prüfung; Quadrate: größter. Durchgezogen: kleinste Quadrate, grau ihr "
        + "95-%-Vorhersageband (Student-t). Lang gestrichelt: Theil-Sen-Gerade (Sen 1968), ihre Steigung der Median der "
        + "Steigungen aller Paare, ihr Achsenabschnitt der Median von y minus Steigung × x.";

    public override string TrendWithoutLimits =>
        "Ein Nenndurchmesser des Herstellers mit Toleranz ist nicht erfasst: eine Grenze ist nicht eingezeichnet.";

    public override string NothingProjected =>
        "Es wird nichts vorausberechnet, da es keine Grenze des Herstellers gibt, auf die hin zu rechnen wäre.";

    public override string NoApproach =>
        "Weder der kleinste noch der größte Mittelwert läuft auf die Grenze des Herstellers zu; ein Zeitpunkt wird nicht "
        + "vorgeschlagen.";

    public override string TrendTitle(string item) =>
        $"Kleinster und größter mittlerer Durchmesser, mm, von {item} nach dem Tag der Prüfung, mit den Grenzen des "
        + "Herstellers und der Vorausberechnung";

    public override string TrendLimits(string least, string most, string source) =>
        $"Kurz gestrichelt: die Grenzen des Herstellers, {least} und {most}\u00A0mm. Quelle: {source}.";

    public override string Proposal(LocalDate? on, bool thinning, string perYear, string limit, LocalDate? byBand, LocalDate? byLine) =>
        $"Vorgeschlagener Zeitpunkt, bis zu dem es eine Gefahr werden könnte: {Printed.Day(on)}. Der "
        + $"{(thinning ? "kleinste Mittelwert fällt" : "größte Mittelwert wächst")} um {perYear}\u00A0mm im Jahr (Theil-Sen) "
        + $"und würde die {limit}\u00A0mm des Herstellers erreichen: {Either(thinning, byBand, byLine)}. Vorgeschlagen ist der "
        + "frühere Tag, abgerundet auf einen ganzen Tag. "
        + "Es ist ein Vorschlag: er bindet erst, wenn der Prüfer ihn unter den Mängeln einträgt; die Anleitung des "
        + "Herstellers und die Beurteilung des Prüfers gehen vor.";

    public override string AfterService(LocalDate? end) =>
        $" Er liegt nach dem letzten Gebrauchstag nach den aufgezeichneten Grenzen, {Printed.Day(end)}, der maßgebend ist.";

    public override string Millimetres(string number) => $"{number}\u00A0mm";

    public override string MeanAt(string mean, string position) => $"{mean}\u00A0mm bei {position}\u00A0mm";

    public override string StandingOut(string places) =>
        $"Raute: hebt sich vom übrigen Seil ab (modifiziertes z über 3,5, Iglewicz und Hoaglin 1993): {places}.";

    public override string TooCloseToCall(string places) =>
        "Ring: innerhalb der Grenze des Herstellers, aber nach der Unsicherheit des Mittelwerts (JCGM 100:2008, 95 %) zu "
        + $"nahe daran, um zu entscheiden: {places}.";

    private static string Either(bool thinning, LocalDate? byBand, LocalDate? byLine)
    {
        var band = byBand is null
            ? null
            : $"am {Printed.Day(byBand)} nach der {(thinning ? "unteren" : "oberen")} Grenze des Vorhersagebands";
        var line = byLine is null ? null : $"am {Printed.Day(byLine)} nach der Theil-Sen-Geraden";
        return Printed.Join(" oder ", band, line);
    }
}
