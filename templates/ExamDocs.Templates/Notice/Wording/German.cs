using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Notice.Wording;

/// <inheritdoc />
internal sealed class German : NoticePhrases
{
    public override string Title => "Mängelmeldung";
    public override string ImminentRisk => "Bestehende oder unmittelbar drohende Gefahr schwerer Verletzung";
    public override string Recipients => "An";
    public override string Employer => "Arbeitgeber";
    public override string Owner => "Eigentümer (Vermieter, Leasinggeber)";
    public override string AuthorityHeading => "Eine Abschrift des Berichts geht so bald wie möglich an die Aufsichtsbehörde";
    public override string AuthorityRecorded => "Behörde laut Aufzeichnung:";
    public override string AuthorityMissing => "Name und Anschrift der Dienststelle: nicht erfasst";
    public override string Premises => "Prüfort";
    public override string Item => "Der Gegenstand";
    public override string Defects => "Der Mangel";
    public override string Duty => "Was der Arbeitgeber tun muss";
    public override string Why => "Grund";
    public override string Told => "Unterrichtet wurden";
    public override string ToldWhom => "Wer";
    public override string ToldHow => "Wie";
    public override string ToldOn => "Wann";
    public override string For => "Mangel";
    public override string GivenBy => "Übergeben vom Prüfer:";
    public override string ReceivedBy => "Für den Arbeitgeber entgegengenommen:";
    public override string NoDetail => "In der Aufzeichnung ist kein Mangel ausgeführt; die Gründe sind diese:";

    public override string KeepApart =>
        "Den Gegenstand aus dem Gebrauch nehmen, kennzeichnen und getrennt von benutzter Ausrüstung aufbewahren.";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Diese Meldung warnt sofort vor einer Gefahr. Sie ersetzt nicht den Bericht, den das Recht verlangt.",
        "Buchstabe und Zahl vor einem Grund nennen seine Regel: W nimmt den Gegenstand aus dem Gebrauch, D setzt seinen "
            + "letzten Gebrauchstag, U sagt, was offen ist.",
        "„Nicht erfasst“ heißt, dass die Aufzeichnung keinen solchen Wert enthält. Es ist kein Grund zu warten.",
    ];

    public override string WithdrawnOn => "Ausgesondert am";
    public override string PremisesUnseen => "Ort";
    public override string GivenUnseenBy => "Übergeben von:";

    public override string TakenOut(LocalDate? day, string notice) =>
        $"Ausgesondert am {Printed.Day(day)} durch die Sicherheitsmitteilung {notice} des Herstellers. Niemand hat den Gegenstand geprüft.";

    public override string DoNotUse => "Nicht benutzen";

    public override string DoNotUseAfter(LocalDate? lastDay) => $"Nach dem {Printed.Day(lastDay)} nicht mehr benutzen";

    public override string LastDay(LocalDate? lastDay) =>
        $"Der letzte Gebrauchstag ist der {Printed.Day(lastDay)}. Danach ist der Gegenstand nicht zu benutzen, was immer "
        + "sonst fällig ist.";

    public override string LawNotKnown =>
        "Das Recht, nach dem geprüft wurde, ist nicht erfasst oder nicht bekannt: sofort klären, ob auch eine "
        + "Aufsichtsbehörde zu benachrichtigen ist.";

    public override string ReportHeldBack =>
        "Über diesen Gegenstand wird kein Bericht ausgestellt, bevor seine Aufzeichnung berichtigt ist. Sofort "
        + "berichtigen: die Pflicht, die Abschrift zu senden, wartet nicht.";
}
