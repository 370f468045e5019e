using System.Globalization;

namespace ExamDocs.Templates.DuePlan.Wording;

/// <inheritdoc />
internal sealed class German : DuePhrases
{
    public override string Title => "Was fällig wird";
    public override string Lead => "Ein Plan aus den Entscheidungen eines Registers. Er ist kein Prüfbericht und hat keine Nummer.";
    public override string Whose => "Wessen Ausrüstung";
    public override string Everybody => "alle im Register";
    public override string Period => "Wird fällig";
    public override string Counted => "Gegenstände";

    public override string DueAndApart(int due, int apart) => $"zu prüfen: {N(due)}; nicht zu benutzen: {N(apart)}";

    public override string DecidesNothing =>
        "Diese Seite entscheidet nichts: sie gibt wieder, was die festgehaltenen Entscheidungen an ihrem Tag sagen.";

    public override string ApartHeading => "Nicht zu benutzen";
    public override string ApartLead =>
        "Am Tag dieser Seite ausgesondert, gesperrt oder überfällig, gleich was wann fällig wird. Dafür wird kein Termin vorgeschlagen.";

    public override string TimelineHeading => "Monat für Monat";
    public override string TimelineLead =>
        "Über jeder Linie steht, wie viele Gegenstände im Monat fällig werden; jeder Strich ist ein Tag. Eine Raute ist der letzte Tag "
        + "eines vorgeschlagenen Termins.";

    public override string NothingDue => "In dieser Zeit wird nichts fällig.";
    public override string VisitRow => "Termine";

    public override string PlotTitle(string place) => $"Was in welchem Monat fällig wird: {place}";

    public override string MonthsHeading => "Wie viel in jedem Monat";
    public override string Month => "Monat";
    public override string Employer => "Arbeitgeber";
    public override string Premises => "Betriebsstätte";
    public override string Category => "Kategorie";
    public override string Items => "Anzahl";

    public override string VisitsHeading => "Vorgeschlagene Termine";
    public override string VisitsLead =>
        "Jeder an seinem Tag oder davor. Ein Gegenstand kann früher an die Reihe kommen als nötig, nie später. Feiertage und "
        + "Wochenenden werden nicht beachtet.";

    public override string OnOrBefore => "Spätestens am";
    public override string Where => "Wo";
    public override string Time => "Dauer";
    public override string Which => "Welche Gegenstände";

    public override string HoursAndMinutes(int hours, int minutes) => $"{N(hours)} Std. {N(minutes)} Min.";

    public override string NoFigureFor(string categories) => $"ohne Angabe: {categories}";

    public override string ListHeading => "Gegenstand für Gegenstand";
    public override string FallsDue => "Wird fällig";
    public override string Item => "Gegenstand";
    public override string Serial => "Seriennummer";
    public override string NextBy => "Nächste Prüfung bis";
    public override string ToKnow => "Zu wissen";

    public override string TimeNotMeasured =>
        "Die Dauer beruht auf eigenen Angaben. Die Aufzeichnungen enthalten keine Uhrzeiten; wie lange frühere Besuche dauerten, lässt "
        + "sich aus ihnen nicht messen.";

    public override string LetterTitle => "Fällige gründliche Prüfungen";

    public override string LetterLead(string from, string to, string asOf) =>
        $"Diese Ausrüstung muss vom {from} bis {to} geprüft werden, um in Gebrauch zu bleiben; so steht es am {asOf} im Register. Bitte "
        + "halten Sie sie bis zu den genannten Tagen bereit. Am Tag selbst darf sie noch benutzt werden, danach nicht mehr.";

    public override string LetterRing => "Fehlt hier Ausrüstung, oder gehört sie Ihnen nicht mehr, sagen Sie es uns bitte.";

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
