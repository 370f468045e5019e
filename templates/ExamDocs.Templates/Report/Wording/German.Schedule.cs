using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

internal sealed partial class German
{
    public override string ColumnMarking => "Serien-Nr. oder Zeichen";
    public override string ColumnMade => "Hergestellt";
    public override string ColumnLast => "Zuletzt geprüft";
    public override string ColumnUseUntil => "Benutzen bis";
    public override string ColumnNote => "Bemerkung";
    public override string Position => "Stelle, mm";
    public override string Readings => "Messwerte, mm";
    public override string Mean => "Mittel, mm";
    public override string NotKnown => "nicht bekannt";
    public override string First => "erstmals";
    public override string SafeNo => "nein, sichere Benutzbarkeit wurde nicht festgestellt";
    public override string Purchased => "Gekauft";
    public override string DeclarationLabel => "Konformitätserklärung";
    public override string Scope => "Prüfumfang";
    public override string Laws => "Geprüft nach";
    public override string ExaminedBy => "Geprüft von";
    public override string AnnexToRegister => "Dem Sicherheitsregister (registre de sécurité) beizufügen.";
    public override string NoSign => "Niemand zu befragen; kein Anzeichen gefunden";
    public override string PlacesHeading => "Wo jeder Absatz steht";
    public override string LawHeading => "Recht";
    public override string NotReadHeading => "Wortlaut nicht am Original geprüft";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "„Benutzen bis“ und „nicht mehr benutzen nach dem“ nennen den letzten Gebrauchstag. Davon zu unterscheiden ist der Tag, bis "
            + "zu dem die nächste Prüfung fällig ist: der frühere von beiden gilt. In einer Zeile ist „Benutzen bis“ das Ende "
            + "der Gebrauchsdauer nach den erfassten Angaben des Herstellers; ein Strich heißt, dass sie keines setzen.",
        "Eine Gruppe enthält Gegenstände ohne Beanstandung, für die alles gilt, was ihre Überschrift sagt. „Nicht erfasst“ und „nicht "
            + "bekannt“ heißen, dass die Aufzeichnung keinen solchen Wert enthält, nicht, dass es keinen gibt.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Dieser Bericht gilt für jeden Gegenstand so, wie er am Tag der Prüfung vorgefunden wurde, und für keinen anderen "
            + "Gegenstand, Teil oder Tag. Er ersetzt nicht die Kontrolle vor jeder Benutzung.",
        "Ein Gegenstand, der einen Sturz aufgefangen hat, mit Säge, Hitze oder Chemikalien in Berührung kam oder an dem "
            + "Zweifel besteht, wird ausgesondert und neu geprüft, was auch immer dieser Bericht sagt.",
    ];

    public override string CountLabel(Outcome outcome, int count) =>
        outcome switch
        {
            Outcome.Withdraw => "nicht benutzen",
            Outcome.FitUntil => "befristet weiter benutzbar",
            Outcome.Undetermined => "ungeklärt: nicht benutzen",
            _ => "weiter benutzbar",
        };

    public override string NotInReport(int count) => "nicht in diesem Bericht: nicht benutzen";

    public override string Part(int number, int of) =>
        $"Bericht {Printed.Count(number)} von {Printed.Count(of)} über diese Prüfung. "
        + "Die übrigen Gegenstände stehen in den anderen Berichten.";

    public override string BlocksHeading(BlockKind kind, int items) =>
        kind switch
        {
            BlockKind.Withdrawn => $"Nicht benutzen: {Items(items)}",
            BlockKind.Limited => $"Nur bis zu einem Tag: {Items(items)}",
            BlockKind.Overdue => $"Weiter benutzbar, bei der Prüfung überfällig: {Items(items)}",
            BlockKind.First => $"Weiter benutzbar, erste Prüfung: {Items(items)}",
            _ => $"Weiter benutzbar, mit längeren Angaben: {Items(items)}",
        };

    public override string LinesHeading(int items) => $"Weiter benutzbar: {Items(items)} ohne Beanstandung";

    public override string Items(int count) => count == 1 ? "1 Gegenstand" : $"{Printed.Count(count)} Gegenstände";

    public override string Continued(int from, int to, int of) =>
        $"Fortsetzung: {Printed.Count(from)} bis {Printed.Count(to)} von {Printed.Count(of)} Gegenständen";

    public override string ExaminedOn(string day) => $"geprüft {day}";

    public override string Mark(string mark) => $"Eigentümerzeichen {mark}";

    protected override string Tolerated(string nominal, string tolerance, string low, string high) =>
        $"Nennmaß des Herstellers {nominal}\u00A0mm ± {tolerance}\u00A0%: {low} bis {high}\u00A0mm (schattiert).";

    protected override string NoTolerance => "Keine Toleranz des Herstellers erfasst: keine Grenze eingezeichnet.";

    public override string Declaration(string? reference, LocalDate? on) => $"{Printed.Text(reference)}, {Printed.Day(on)}";

    public override string Remedy(string? what, LocalDate? on) => $"Behoben am {Printed.Day(on)}: {Printed.Text(what)}";

    public override string Release(LocalDate? on, string by, bool inError, string? grounds) =>
        $"Freigegeben am {Printed.Day(on)} von {by}{(inError ? ", weil die Aussonderung irrtümlich erfasst wurde" : "")}: "
        + Printed.Text(grounds);

    public override string TrendProposal(LocalDate on) =>
        $"Nach der Entwicklung der Durchmesser könnte er bis {Printed.Day(on)} eine Gefahr werden: ein Vorschlag, der erst gilt, "
        + "wenn der Prüfer ihn als Mangel einträgt";

    public override string Place(ParagraphPlace place, bool isSchedule) =>
        (place, isSchedule) switch
        {
            (ParagraphPlace.Once, _) => "einmal, auf der ersten Seite oder bei den Unterschriften",
            (ParagraphPlace.Unknown, _) => "dem Programm ist keine Stelle bekannt: nachsehen, ob der Bericht es enthält",
            (_, false) => "bei den Angaben zum Gegenstand",
            (ParagraphPlace.Group, _) => "in der Überschrift der Gruppe oder im eigenen Block des Gegenstands",
            (ParagraphPlace.Line, _) => "in der eigenen Zeile oder im eigenen Block des Gegenstands",
            _ => "immer in einem eigenen Block",
        };

    public override string AddUp(int blocks, int lines, int groups) =>
        $"{Printed.Count(blocks)} in einem eigenen Block und {Printed.Count(lines)} in Zeilen von "
        + $"{(groups == 1 ? "1 Gruppe" : $"{Printed.Count(groups)} Gruppen")} ergeben {Items(blocks + lines)}.";

    public override string Evidence(string? number) =>
        "Was für und gegen den weiteren Gebrauch spricht, alle Messungen und Fotos und die Quelle jeder Regel stehen in den Nachweisen zur "
        + $"Prüfung: {number ?? "auf Anfrage beim Aussteller, unter der Auftragsnummer"}.";

    public override string PhotosElsewhere(int count) =>
        count == 1 ? "1 Foto, in den Nachweisen zur Prüfung" : $"{Printed.Count(count)} Fotos, in den Nachweisen zur Prüfung";
}
