using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Label.Wording;

/// <inheritdoc />
internal sealed class German : LabelPhrases
{
    public override string Eyelet => "Öse";
    public override IReadOnlyList<string> Signal { get; } = ["NICHT", "BENUTZEN"];
    public override double NameColumnEms => 4.1;
    public override string NotDetermined => "UNGEKLÄRT";
    public override string SignLabel => "Verbotszeichen: nicht benutzen";
    public override string HoldSignLabel => "Fragezeichen in einem auf der Spitze stehenden Quadrat: ungeklärt";
    public override string Why => "Grund";
    public override string Since => "Seit";
    public override string Release => "Freigabe";
    public override string WhyHold => "Aufzeichnung unvollständig: offen, ob er benutzt werden darf.";

    public override string ReleaseByPerson(string? regime) =>
        $"Nur schriftlich durch eine {Able(regime)}e Person. Getrennt halten; Schild nicht entfernen.";

    public override string ReleaseHold(string? regime) =>
        $"Nur schriftlich, nach Prüfung durch eine {Able(regime)}e Person. Schild nicht entfernen.";

    public override string NeverRelease => "NICHT FREIZUGEBEN. Getrennt halten, dann so vernichten, dass niemand ihn mehr benutzen kann.";

    public override string KeptBy => "Halter";
    public override string Ring => "Anrufen";
    public override string Ask => "Auskunft";

    public override string Says(bool isHold, string day) =>
        isHold ? $"NICHT BENUTZEN. Ungeklärt, {day}." : $"NICHT BENUTZEN. Ausgesondert, {day}.";

    public override string ExaminedBy => "Geprüft von:";
    public override string PageOne => "Seite 1 von 1";
    public override string Shortened => "… (gekürzt; das Ganze steht in der Aufzeichnung)";

    public override string Caution(string? regime) =>
        $"Herstelleranleitung, örtliches Recht und Urteil der {Able(regime)}en Person gehen vor.";

    public override string Verify(string number) => $"{number} mit dem Register des Ausstellers vergleichen.";

    public override string More(int more) => $"und {Printed.Count(more)} weitere: siehe Aufzeichnung.";

    public override string Title(string kind, string number) => $"{kind} {number}";

    public override string HandTagTitle => "Sperrschild zum Ausfüllen von Hand";
    public override IReadOnlyList<string> HandTagLines { get; } = ["Gegenstand", "Seriennr.", "Grund", "Seit", "Von"];

    public override string HandTagNote =>
        "Von Hand ausgefüllt: kein ausgestelltes Dokument, daher ohne Nummer. "
        + "Den Gegenstand beim nächsten Prüfauftrag in die Aufzeichnung aufnehmen.";

    public override string QuarantineTitle => "Sperrschild";
    public override string HoldTitle => "Sperrschild (ungeklärt)";

    public override string Regime(string law) => $"Geprüft nach: {law}";

    public override string TakenOutBy(string notice) =>
        $"Nicht geprüft. Durch Mitteilung {notice} des Herstellers, aus dem Gebrauch genommen von:";

    public override string Law(string law) => $"Recht: {law}";

    public override string SinceDay(LocalDate? day) => Printed.Day(day);

    // The name in section 2(6) of the Betriebssicherheitsverordnung (from memory), which is that of no other law.
    private static string Able(string? regime) => regime is "de" ? "zur Prüfung befähigt" : "befähigt";
}
