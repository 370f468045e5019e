using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

/// <inheritdoc />
internal sealed partial class German : ReportPhrases
{
    public override string MadeFor => "Erstellt für (Arbeitgeber)";
    public override string Premises => "Prüfort";
    public override string HiredFrom => "Eigentümer (Vermieter, Leasinggeber)";
    public override string ReportDate => "Datum des Berichts";
    public override string ResultHeading => "Ergebnis";
    public override string DoNotUseHeading => "Nicht benutzen";
    public override string UntilHeading => "Nur befristet";
    public override string ReportItemHeading => "Angaben zum Gegenstand";
    public override string ColumnNumber => "Nr.";
    public override string ColumnOutcome => "Ergebnis";
    public override string ColumnNext => "Nächste Prüfung bis";
    public override string NotReportedHeading => "Bei dieser Prüfung erfasst, aber nicht in diesem Bericht";

    public override string NotReported =>
        "Über diese Gegenstände wird nicht berichtet, weil sie nicht geprüft wurden oder ihre Aufzeichnung unvollständig "
        + "oder widersprüchlich ist oder sich nicht vollständig drucken lässt. Sie gelten nicht als gebrauchstauglich.";

    public override string Basis => "Geprüft";
    public override string SafeToOperate => "Sicher benutzbar";
    public override string DefectsHeading => "Mängel";
    public override string NoDefects => "keiner erfasst, der eine Gefahr ist oder werden könnte";

    public override string NoDefectWritten =>
        "kein Mangel des Gegenstands selbst ausgeführt; die Gründe oben sagen, warum er nicht zu benutzen ist";

    public override string Tests => "Erprobung (Funktions-, Belastungsprüfung)";
    public override string NoTests => "keine Erprobung erfasst";
    public override string DiametersHeading => "Durchmesser entlang des Seils";
    public override string AuthorAndSignerHeading => "Bericht erstellt und bestätigt von";
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

    public override string Last(string examination) => $"Letzte {examination}";

    public override string MoreReasons(int more) => more == 1 ? "; und 1 weiterer Grund" : $"; und {Printed.Count(more)} weitere Gründe";

    public override string ShortOutcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "Nicht benutzen",
            Core.Records.Outcome.FitUntil => "Befristet",
            Core.Records.Outcome.Undetermined => "Nicht benutzen",
            _ => "Weiter benutzbar",
        };

    public override string PositionOf(int position, int of) => $"Gegenstand {Printed.Count(position)} von {Printed.Count(of)}";

    public override string SafeFit => "ja, im geprüften Zustand";

    public override string SafeUntil(LocalDate? until) => $"ja, im geprüften Zustand, bis einschließlich {Printed.Day(until)}";

    public override string SafeInstalled => "ja: richtig eingebaut und im geprüften Zustand sicher benutzbar";

    public override string Scheme(string? reference, string? author, int? months) =>
        $"Prüfplan {Printed.Text(reference)}, aufgestellt von {Printed.Text(author)}, Abstand in Monaten: "
        + $"{(months is { } m ? Printed.Count(m) : CommonPhrases.Languages.German.NotRecorded)}";

    public override string Event(string? what, LocalDate? on) => $"{Printed.Text(what)}, am {Printed.Day(on)}";
}
