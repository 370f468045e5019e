using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

/// <inheritdoc />
internal sealed class German : ReportPhrases
{
    public override string MadeFor => "Erstellt für (Arbeitgeber)";
    public override string Premises => "Ort der Prüfung";
    public override string HiredFrom => "Eigentümer, von dem gemietet oder geleast";
    public override string ReportDate => "Datum des Berichts";
    public override string ResultHeading => "Ergebnis";
    public override string DoNotUseHeading => "Nicht benutzen";
    public override string UntilHeading => "Nur befristet";
    public override string ScheduleHeading => "Verzeichnis";
    public override string ItemsHeading => "Angaben zu jedem Gegenstand";
    public override string ReportItemHeading => "Angaben zum Gegenstand";
    public override string ColumnNumber => "Nr.";
    public override string ColumnOutcome => "Ergebnis";
    public override string ColumnNotAfter => "Nicht benutzen nach";
    public override string ColumnNext => "Nächste Prüfung bis";
    public override string ColumnWhy => "Grund";
    public override string NotReportedHeading => "Bei diesem Termin erfasst, aber nicht in diesem Bericht";

    public override string NotReported =>
        "Über diese Gegenstände wird nicht berichtet, weil sie nicht geprüft wurden oder ihre Aufzeichnung unvollständig "
        + "oder widersprüchlich ist oder sich nicht vollständig drucken lässt. Sie gelten nicht als gebrauchstauglich.";

    public override string Identification => "Kennzeichnung";
    public override string Basis => "Geprüft";
    public override string SafeToOperate => "Wäre sicher zu benutzen";
    public override string ReasonsHeading => "Grund";
    public override string DefectsHeading => "Mängel";
    public override string NoDefects => "Es ist kein Mangel aufgezeichnet, der eine Gefahr für Personen ist oder werden könnte.";

    public override string NoDefectWritten =>
        "Ein Mangel des Gegenstands selbst ist nicht ausgeführt; die Gründe oben sagen, warum er nicht zu benutzen ist.";

    public override string NotInReport => "nicht in diesem Bericht: nicht benutzen";
    public override string Tests => "Durchgeführte Versuche";
    public override string NoTests => "keine aufgezeichnet";
    public override string CaseHeading => "was für und gegen den weiteren Gebrauch spricht";
    public override string Photo => "Foto in der Aufzeichnung:";

    public override string Exposure => "Gebrauch und Beanspruchung";
    public override string DiametersHeading => "Durchmesser entlang des Seils";
    public override string Position => "Stelle, mm";
    public override string Readings => "Messwerte, mm";
    public override string Mean => "Mittel, mm";
    public override string RenewalsHeading => "erneuerte Teile";
    public override string AuthorHeading => "Bericht erstellt von";
    public override string AuthenticatedHeading => "Bestätigt von";
    public override string Name => "Name";
    public override string Address => "Anschrift";
    public override string Qualifications => "Befähigung";
    public override string SelfEmployed => "Selbständig";
    public override string EmployedBy => "Angestellt bei";
    public override string EmploymentNotRecorded => "ob selbständig oder angestellt: nicht erfasst";
    public override string SignLead => "Durch Unterschrift bestätigt:";
    public override string LegendHeading => "Wie dieser Bericht zu lesen ist";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "Buchstabe und Zahl vor einem Grund nennen die Regel, auf der er beruht: W nimmt den Gegenstand aus dem "
            + "Gebrauch, D setzt seinen letzten Gebrauchstag, U sagt, was die Aufzeichnung offen lässt.",
        "Entscheidende Kriterien beenden bei einem Mangel den Gebrauch; abzuwägende werden mit dem Übrigen gewogen; "
            + "hinweisende vermerken übliche Abnutzung. Ein Zweifel zählt als Mangel.",
        "„Nicht benutzen nach“ einem Datum: dieses Datum ist der letzte Gebrauchstag. Es steht neben dem spätesten Tag "
            + "der nächsten Prüfung; der frühere von beiden gilt.",
        "„Für und gegen den weiteren Gebrauch“ legt die Belege in der Reihenfolge dar, in der abgewogen wurde. „Dagegen“ "
            + "und „offen“ bezeichnen, was gegen den Gegenstand spricht oder etwas offen lässt; eine Zeile ohne beides spricht "
            + "für ihn oder wiegt für sich nichts.",
        "„Nicht erfasst“ heißt, dass die Aufzeichnung keinen solchen Wert enthält; es heißt nicht, dass es keinen gibt.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Dieser Bericht spricht von jedem Gegenstand, wie er am Tag der Prüfung vorgefunden wurde, und von keinem "
            + "anderen Gegenstand, Teil oder Tag. Er ersetzt nicht die Kontrolle vor jeder Benutzung.",
        "Ein Gegenstand, der einen Sturz aufgefangen hat, mit Säge, Hitze oder Chemikalien in Berührung kam oder an dem "
            + "irgendein Zweifel besteht, wird aus dem Gebrauch genommen und neu geprüft, was immer dieser Bericht sagt.",
    ];

    public override string Last(string examination) => $"Letzte {examination}";

    public override string Summary(int items) =>
        items == 1 ? "Berichtet wird über 1 Gegenstand." : $"Berichtet wird über {Printed.Count(items)} Gegenstände.";

    public override string CountLabel(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "nicht benutzen",
            Core.Records.Outcome.FitUntil => "befristet in Gebrauch",
            Core.Records.Outcome.Undetermined => "nicht entschieden: nicht benutzen",
            _ => "dürfen in Gebrauch bleiben",
        };

    public override string MoreReasons(int more) => more == 1 ? "; und 1 weiterer Grund" : $"; und {Printed.Count(more)} weitere Gründe";

    public override string ShortOutcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "Nicht benutzen",
            Core.Records.Outcome.FitUntil => "Befristet",
            Core.Records.Outcome.Undetermined => "Nicht benutzen",
            _ => "Darf bleiben",
        };

    public override string PositionOf(int position, int of) => $"Gegenstand {Printed.Count(position)} von {Printed.Count(of)}";

    public override string SafeFit => "Ja: so wie geprüft wäre er sicher zu benutzen.";

    public override string SafeUntil(LocalDate? until) =>
        $"Ja: so wie geprüft wäre er bis einschließlich {Printed.Day(until)} sicher zu benutzen.";

    public override string SafeInstalled => "Ja: er ist richtig eingebaut und wäre, so wie geprüft, sicher zu benutzen.";

    public override string SafeNo => "Nein: diese Aussage wird nicht gemacht.";

    public override string Scheme(string? reference, string? author, int? months) =>
        $"Prüfplan {Printed.Text(reference)}, aufgestellt von {Printed.Text(author)}, Abstand in Monaten: "
        + $"{(months is { } m ? Printed.Count(m) : CommonPhrases.Languages.German.NotRecorded)}";

    public override string Event(string? what, LocalDate? on) => $"{Printed.Text(what)}, am {Printed.Day(on)}";

    public override string CaseStep(Heading heading) =>
        heading switch
        {
            Heading.Identity => "Kennzeichnung",
            Heading.History => "Vorgeschichte",
            Heading.Decisive => "Entscheidende Kriterien",
            Heading.Judged => "Abzuwägende Kriterien",
            Heading.Advisory => "Hinweise",
            Heading.Measurements => "Messungen",
            Heading.Limits => "Grenzen",
            _ => "Zweifel, und was sie ausgeräumt hat",
        };

    public override string Routine(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "Ohne Befund:",
            ObservedState.NoSign => "Niemand zu befragen; kein Anzeichen gefunden:",
            _ => "Entfällt:",
        };

    public override string CaseLine(Bearing bearing, string code, string text)
    {
        var word = bearing switch
        {
            Bearing.Against => "Dagegen",
            Bearing.Open => "Offen",
            _ => "",
        };
        var lead = Printed.Join(", ", word, code);
        return lead.Length == 0 ? text : $"{lead}: {text}";
    }
}
