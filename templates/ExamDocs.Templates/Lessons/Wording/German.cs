using System.Globalization;

namespace ExamDocs.Templates.Lessons.Wording;

/// <inheritdoc />
internal sealed class German : LessonsPhrases
{
    public override string Title => "Was die Aufzeichnungen lehren";
    public override string Lead => "Gezählt aus den Prüfungen eines Registers. Dies ist kein Bericht und hat keine Nummer.";
    public override string Whose => "Wessen Ausrüstung";
    public override string Everybody => "alle im Register";
    public override string Counted => "Gezählt";

    public override string VisitsAndItems(int visits, int items) => $"Termine: {N(visits)}, Gegenstände: {N(items)}";

    public override string Period => "Geprüft";
    public override string ThisRegisterOnly =>
        "Diese Zahlen gelten nur für dieses Register. Sie entscheiden über keinen Gegenstand und setzen keine Grenze: Ein "
        + "Gegenstand ist nach seiner eigenen Prüfung tauglich oder ausgesondert.";

    public override string RatesHeading => "Wie viele ausgesondert werden";

    public override string RatesLead(int least) =>
        "Gegenstände, deren Gebrauch mit einer Aussonderung wegen Verschleiß oder Mangel endete, von allen geprüften. Was "
        + "abgelaufen oder verloren ist oder wegen eines Teils ausgesondert wurde, zählt als nicht ausgesondert. Der Balken ist "
        + "der 95-%-Bereich (Wilson): Wo zwei Balken sich weit überdecken, kann der Unterschied Zufall sein. "
        + $"Gruppen mit weniger als {N(least)} stehen ohne Balken.";

    public override string Group => "Gruppe";
    public override string Items => "Gegenstände";
    public override string Withdrawn => "Ausgesondert";
    public override string Share => "Anteil";
    public override string Interval => "95-%-Bereich";
    public override string TooFew => "zu wenige zum Vergleich";

    public override string TooFewToCompare(int least) =>
        $"Zu wenige zum Vergleich: Weniger als zwei Gruppen haben {N(least)} Gegenstände oder mehr.";

    public override string MoreInWorkbook(int groups) => $"Die Arbeitsmappe hat {N(groups)} weitere Gruppen.";

    public override string By(GroupedBy by) =>
        by switch
        {
            GroupedBy.Everything => "Alle Seilbrücken",
            GroupedBy.Category => "Kategorie",
            GroupedBy.Model => "Modell",
            GroupedBy.Hardware => "Beschlag auf der Brücke",
            GroupedBy.Ground => "Boden, auf dem die Brücke gebraucht wird",
            _ => "Alter bei der Prüfung",
        };

    public override string Years(string span) => $"{span} Jahre";

    public override string SurvivalHeading => "Wie lange Seilbrücken halten";
    public override string SurvivalLead =>
        "Der Anteil der Seilbrücken, die noch nicht wegen Verschleiß oder Mangel ausgesondert sind, nach Monaten seit der "
        + "ersten Benutzung (Kaplan-Meier; Fehler nach Greenwood, Log-log-Bereich, 95 %). Ein kleiner senkrechter Strich steht "
        + "für Brücken, die bei der letzten Prüfung noch in Gebrauch waren oder aus anderem Grund ausschieden. Die Linie ist "
        + "dünn, wo weniger als zehn noch beobachtet werden: Dort bewegt eine einzige Brücke sie weit. Eine Aussonderung zählt "
        + "am Tag, an dem sie festgestellt wurde: Der Verschleiß ist älter.";
    public override string NoBridges =>
        "Das Register hat keine Seilbrücke, deren erste Benutzung bekannt ist und die danach geprüft wurde.";

    public override string LeftOut(int bridges) =>
        $"Ausgelassen: {N(bridges)} Seilbrücken, deren erste Benutzung nicht bekannt ist oder die keine Zeit lang beobachtet wurden.";

    public override string ManyComparisons =>
        "Gegen die übrigen: wie oft sich lauter gleiche Brücken durch Zufall ebenso unterschieden (Log-Rank-Test). Von zwanzig "
        + "solchen Vergleichen liegt etwa einer allein durch Zufall unter 0,05. Benutzer, Boden und Beschlag hängen zusammen: "
        + "Ein Unterschied beweist nicht seine Ursache.";
    public override string AllBridges => "Alle";
    public override string Bridges => "Brücken";
    public override string Median => "Die Hälfte hält bis, Monate (95 %)";

    public override string LeftAfter(int months) => $"Übrig nach {N(months)} Monaten (95 %)";

    public override string PerHundredYears => "Ausgesondert je 100 Brückenjahre (95 %, exakt)";
    public override string AgainstOthers => "Gegen die übrigen, p";
    public override string NotReached => "nicht erreicht";

    public override string OnlyAtRisk(int bridges) => $"dann nur noch {N(bridges)} beobachtet";

    public override string MonthsOfUse => "Monate seit der ersten Benutzung";

    public override string PlotTitle(string by) => $"Anteil der übrigen Seilbrücken nach Monaten seit der ersten Benutzung. {by}";

    public override string WearHeading => "Wie schnell Seilbrücken dünner werden";
    public override string WearLead =>
        "Millimeter Durchmesser je Monat an der dünnsten Stelle, für Brücken, die an drei oder mehr Tagen gemessen wurden "
        + "(Steigung nach Theil und Sen). Jeder Ring ist eine Brücke, der Kasten fasst die mittlere Hälfte. Unter null wurde "
        + "eine Brücke dicker.";
    public override string MedianWear => "Median, mm je Monat";
    public override string MiddleHalf => "Mittlere Hälfte, mm je Monat";

    public override string ReasonsHeading => "Warum sie ausgesondert werden";
    public override string ReasonsLead =>
        "Kriterien mit Mangel oder Zweifel bei der Prüfung, mit der der Gebrauch endete. Ein Gegenstand kann mehrere haben.";
    public override string NoReasons => "Kein Gegenstand wurde wegen Verschleiß oder Mangel ausgesondert.";
    public override string Criterion => "Kriterium";

    public override string AgreementHeading => "Sehen zwei Prüfer dasselbe?";
    public override string AgreementLead =>
        "Gegenstände, die zwei Prüfer binnen 31 Tagen ansahen: Sahen beide etwas zu einem Kriterium, oder keiner? Ein "
        + "niedriges Kappa ist ein Anlass, einige Gegenstände gemeinsam anzusehen und sich zu einigen, was als vermerkt gilt. Es "
        + "sagt nicht, wer recht hat, und misst niemandes Arbeit: Darum stehen hier keine Namen. Kriterien, zu denen alle "
        + "Antworten gleich waren, sind ausgelassen.";
    public override string NoPairs =>
        "Kein Gegenstand wurde binnen 31 Tagen von zwei Prüfern geprüft. Um zu erfahren, wie gut Sie übereinstimmen, lassen "
        + "Sie einen Kollegen einige Gegenstände noch einmal prüfen.";
    public override string AllTogether => "Alle zusammen";
    public override string Pairs => "Paare";
    public override string Alike => "Sagten dasselbe";
    public override string Kappa => "Kappa";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Wenige Zahlen beweisen nichts. Was härter gebraucht wird, wird eher ausgesondert: nur vergleichen, was gleich "
            + "gebraucht wird.",
        "Keine Zahl hier kürzt oder verlängert eine Lebensdauer, die der Hersteller nennt, oder eine Frist des Gesetzes.",
        "Ein Gegenstand wird nach Kennung und Eigentümer verfolgt. Einer, der eine andere Kennung bekam, zählt zweimal.",
    ];

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
