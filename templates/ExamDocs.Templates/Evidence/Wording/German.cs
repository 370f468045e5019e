using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Evidence.Wording;

/// <inheritdoc />
internal sealed class German : EvidencePhrases
{
    public override string Title => "Nachweise zur Prüfung";

    public override string Lead =>
        "Worauf die Ergebnisse dieser Prüfung beruhen: was für und gegen den weiteren Gebrauch jedes Gegenstands spricht, die "
        + "Messungen und die Quelle jeder Regel. Die Ergebnisse stehen im unterschriebenen Bericht; dies ist kein Prüfbericht.";

    public override string Employer => "Arbeitgeber";
    public override string Premises => "Prüfort";
    public override string Items => "Gegenstände";
    public override string NotInThisFile => "Nicht enthalten, weil sie sich nicht vollständig drucken lassen";
    public override string Purchased => "Kaufdatum";
    public override string LastExamined => "Zuletzt geprüft";
    public override string Examiner => "Prüfer";
    public override string Law => "Geprüft nach";
    public override string Exposure => "Gebrauch und Beanspruchung";
    public override string ColumnRule => "Regel";
    public override string ColumnReason => "Grund für das Ergebnis";
    public override string ColumnSource => "Quelle";
    public override string ColumnStep => "Schritt";
    public override string ColumnBearing => "Gewicht";
    public override string ColumnEvidence => "Beleg";
    public override string ColumnCriterion => "Kriterium";
    public override string ColumnClass => "Klasse";
    public override string Position => "Stelle, mm";
    public override string Readings => "Messwerte, mm";
    public override string Mean => "Mittel, mm";
    public override string Uncertainty => "± 95\u00A0%, mm";
    public override string Differ => "Messwerte weichen ab um, mm";
    public override string Remark => "Bemerkung";
    public override string Series => "Reihe";
    public override string Points => "Prüfungen";
    public override string PerYear => "Änderung, mm im Jahr";
    public override string Limit => "Grenze des Herstellers, mm";
    public override string ByLine => "Erreicht nach Theil-Sen-Gerade";
    public override string ByBand => "Erreicht nach Vorhersageband";
    public override string Smallest => "kleinstes Mittel";
    public override string Largest => "größtes Mittel";
    public override string SourcesHeading => "Quellen";
    public override string LawHeading => "Recht";
    public override string RulesHeading => "Regeln, die einen Grund oder Befund ergaben";
    public override string LegendHeading => "Wie dieses Dokument zu lesen ist";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "W-Regeln nehmen einen Gegenstand aus dem Gebrauch, D-Regeln setzen seinen letzten Gebrauchstag, U-Regeln sagen, was die "
            + "Aufzeichnung offen lässt. Andere Kürzel sind Befunde der Kontrollen.",
        "Entscheidende Kriterien beenden bei einem Mangel den Gebrauch; abzuwägende werden mit dem Übrigen gewogen; "
            + "hinweisende vermerken übliche Abnutzung. Ein Zweifel zählt als Mangel.",
        "Die Belege stehen in der Reihenfolge, in der abgewogen wurde. Was „vermerkt“ ist, wiegt für sich " + "nichts.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Ausgesonderte Gegenstände bleiben ausgesondert, was auch immer hier für sie spricht. Dieses Dokument stützt den "
            + "Prüfbericht und ersetzt ihn nicht.",
    ];

    public override string ReasonsHeading(string item) => $"{item}: Gründe";

    public override string CaseHeading(string item) => $"{item}: was für und gegen den weiteren Gebrauch spricht";

    public override string DiametersHeading(string item) => $"{item}: Durchmesser entlang des Seils";

    public override string TrendHeading(string item) => $"{item}: Durchmesser von Prüfung zu Prüfung";

    public override string CriteriaHeading(string category) => $"Kriterien: {category}";

    public override string Step(Heading heading) =>
        heading switch
        {
            Heading.Identity => "Identität",
            Heading.History => "Vorgeschichte",
            Heading.Decisive => "Entscheidende Kriterien",
            Heading.Judged => "Abzuwägende Kriterien",
            Heading.Advisory => "Hinweise",
            Heading.Measurements => "Messungen",
            Heading.Limits => "Grenzen",
            _ => "Zweifel, und was sie ausgeräumt hat",
        };

    public override string Bearing(Bearing bearing) =>
        bearing switch
        {
            Core.Determination.CaseForService.Bearing.For => "dafür",
            Core.Determination.CaseForService.Bearing.Against => "dagegen",
            Core.Determination.CaseForService.Bearing.Open => "offen",
            _ => "vermerkt",
        };

    public override string Routine(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "ohne Befund",
            ObservedState.NoSign => "niemand zu befragen; kein Anzeichen gefunden",
            _ => "entfällt",
        };

    protected override string Outside => "außerhalb der Grenzen des Herstellers";

    protected override string StandsOut => "weicht von den übrigen ab";

    protected override string TooClose => "innerhalb, aber zu knapp für eine Aussage";
}
