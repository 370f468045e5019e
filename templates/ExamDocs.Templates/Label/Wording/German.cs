using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Label.Wording;

/// <inheritdoc />
internal sealed class German : LabelPhrases
{
    public override string Eyelet => "Öse";
    public override IReadOnlyList<string> Signal { get; } = ["NICHT", "BENUTZEN"];
    public override string NotDetermined => "UNENTSCHIEDEN";
    public override string SignLabel => "Verbotszeichen: nicht benutzen";
    public override string HoldSignLabel => "Fragezeichen in einem auf der Spitze stehenden Quadrat: nicht entschieden";
    public override string Why => "Grund";
    public override string Since => "Seit";
    public override string Release => "Freigabe";
    public override string WhyHold => "Die Aufzeichnung ist nicht vollständig genug, um zu sagen, ob er benutzt werden darf.";
    public override string ReleaseByPerson => "Nur schriftlich durch eine befähigte Person. Getrennt aufbewahren; Schild dranlassen.";

    public override string ReleaseHold => "Erst wenn eine befähigte Person ihn geprüft und es schriftlich gesagt hat. Schild dranlassen.";

    public override string NeverRelease =>
        "NICHT FREIZUGEBEN. Getrennt aufbewahren, dann so vernichten, dass niemand ihn wieder benutzen kann.";

    public override string Owner => "Eigner";
    public override string ExaminedBy => "Geprüft von:";
    public override string PageOne => "Seite 1 von 1";
    public override string Shortened => "… (gekürzt; das Ganze steht in der Aufzeichnung)";
    public override string Caution => "Herstelleranleitung, örtliches Recht und das Urteil der befähigten Person gehen vor.";

    public override string Verify(string number) => $"{number} mit dem Register des Ausstellers vergleichen.";

    public override string More(int more) => $"und {Printed.Count(more)} weitere: siehe Aufzeichnung.";

    public override string Title(string kind, string number) => $"{kind} {number}";

    public override string QuarantineTitle => "Sperrschild";
    public override string HoldTitle => "Wartschild";

    public override string Regime(string law) => $"Geprüft nach: {law}";

    public override string SinceDay(LocalDate? day) => Printed.Day(day);
}
