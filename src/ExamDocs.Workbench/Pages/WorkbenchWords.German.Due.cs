namespace ExamDocs.Workbench.Pages;

/// <content>German, for what falls due and for spares.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        public override string Due => "Was fällig wird";
        public override string DueHow =>
            "Was von einem Tag bis zu einem anderen geprüft werden muss, nach den Entscheidungen, die heute "
            + "vorliegen. Diese Seite entscheidet nichts.";
        public override string DueFrom => "Vom, einschließlich";
        public override string DueTo => "Bis, einschließlich";
        public override string DueShow => "Zeigen";
        public override string DuePdf => "Der Plan als PDF";
        public override string DueWorkbook => "Eine Arbeitsmappe";
        public override string DueCalendar => "Eine Kalenderdatei";
        public override string DueApart => "Nicht zu benutzen";
        public override string DueVisits => "Vorgeschlagene Termine";
        public override string DueVisitsHow => "Jeder an seinem Tag oder davor. Feiertage und Wochenenden werden nicht beachtet.";
        public override string DueOnOrBefore => "Spätestens am";
        public override string DueWhere => "Wo";
        public override string DueItems => "Gegenstände";
        public override string DueStart => "Einen Besuch dafür beginnen";
        public override string DueStartHow => "Er nimmt auf, was bis zum letzten Tag fällig ist, mit dem Überfälligen.";
        public override string DueList => "Gegenstand für Gegenstand";
        public override string DueDay => "Fällig";
        public override string DueItem => "Gegenstand";
        public override string DueCategory => "Kategorie";
        public override string DueToKnow => "Zu wissen";
        public override string DueNoTimes =>
            "Die Aufzeichnungen enthalten keine Uhrzeiten; wie lange frühere Besuche dauerten, lässt sich aus " + "ihnen nicht messen.";
        public override string Spares => "Ersatzteile";
        public override string SparesHow =>
            "Teile, die bis zu einem Tag zu ersetzen sind: ausgesondert und noch montiert, am Ende ihrer "
            + "Nutzung, oder voraussichtlich abgenutzt. Eine Vorausschau ist ein Vorschlag; es wird keine Grenze "
            + "daraus.";
        public override string SparesTo => "Bis, einschließlich";
        public override string SparesStock => "Was im Bestand ist";
        public override string SparesStockHow =>
            "Eine Arbeitsmappe oder .csv mit einer Spalte „Teilenummer“ und einer Spalte „Menge“. Sie wird nur " + "gelesen.";
        public override string SparesOrder => "Die Bestellung als Arbeitsmappe";
        public override string SparesNotRecorded => "Keine zugelassene Teilenummer eingetragen: den Hersteller fragen";
        public override string SparesBy => "Gebraucht bis";
        public override string SparesPart => "Teil";
        public override string SparesOn => "Montiert an";
        public override string SparesWhy => "Warum";

        public override string DueAndApart(int due, int apart) => Text($"Zu prüfen: {due}; nicht zu benutzen: {apart}");

        public override string DueMore(int more) => Text($"{more} weitere stehen in der Arbeitsmappe.");

        public override string SparesCounted(int needed, int toOrder) => Text($"Zu ersetzen: {needed}; zu bestellen: {toOrder}");

        public override string SparesLine(int needed, int fromStock, int toOrder) =>
            Text($"Gebraucht: {needed}; aus dem Bestand: {fromStock}; zu bestellen: {toOrder}");

        public override string PartNumbers(IReadOnlyList<string> numbers) => string.Join(" oder ", numbers);
    }
}
