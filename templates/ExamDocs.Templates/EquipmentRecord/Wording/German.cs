using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.EquipmentRecord.Wording;

/// <inheritdoc />
internal sealed class German : EquipmentRecordPhrases
{
    public override string Title => "Gerätekarte";

    public override string Lead =>
        "Für den Halter des Gegenstands: Identifizierung, Herstellerangaben und alles, was über Befunde und Arbeiten "
        + "aufgezeichnet ist. Sie ist kein Prüfbericht.";

    public override string Reasons => "Grund";
    public override string Identity => "Identifizierung";
    public override string Purchased => "Gekauft";
    public override string ObsoleteOn => "Angegebenes Ablaufdatum";
    public override string Cleanings => "Bisher gereinigt";
    public override string Declaration => "Konformitätserklärung des Herstellers";
    public override string TransferEvidence => "Beleg der letzten Prüfung bei Übergabe";
    public override string Status => "Verbleib";
    public override string Keeper => "Halter (Arbeitgeber)";
    public override string Owner => "Eigentümer (Vermieter, Leasinggeber)";
    public override string LastExamined => "Davor geprüft";
    public override string Limits => "Herstellerangaben";
    public override string LimitsDocument => "Dokument";
    public override string NoLimits => "Für diesen Gegenstand sind keine Herstellergrenzen aufgezeichnet.";
    public override string MaxUse => "In Gebrauch höchstens";
    public override string MaxStorage => "Auf Lager vor dem ersten Gebrauch höchstens";
    public override string MaxAge => "Ab Herstellung höchstens";
    public override string MaxCleanings => "Gereinigt höchstens";
    public override string EventEnds => "Nach einem außergewöhnlichen Ereignis";
    public override string EventEndsService => "endet sein Gebrauch";
    public override string Interval => "Prüfung nach Angabe des Herstellers";
    public override string NoTimeLimit => "Zeitgrenze";
    public override string MakerSaysNone => "der Hersteller gibt an, dass es keine gibt";
    public override string Unobtainable => "Anleitung nicht zu erlangen";
    public override string NominalDiameter => "Nenndurchmesser";
    public override string PermittedParts => "Zugelassene Teile";
    public override string MinTail => "Überstand hinter einem Knoten mindestens";
    public override string Retying => "Neu knüpfen darf";
    public override string Parts => "Teile und Zusammenbau";

    public override string NoParts => "Kein Teil ist als daran angebracht aufgezeichnet, und er ist nirgends als angebracht aufgezeichnet.";

    public override string PartNow => "jetzt daran angebracht";
    public override string PartBefore => "war daran angebracht und wurde abgenommen";
    public override string WholeNow => "er ist jetzt daran angebracht";
    public override string WholeBefore => "er war daran angebracht und wurde abgenommen";
    public override string ColumnHow => "Wie";
    public override string ColumnThing => "Gegenstand";
    public override string ColumnDescription => "Beschreibung";
    public override string ColumnState => "Eigenes Ergebnis";
    public override string Examinations => "Prüfungen";
    public override string NoExaminations => "In der Aufzeichnung steht keine Prüfung dieses Gegenstands.";
    public override string ColumnDate => "Datum";
    public override string ColumnWhy => "Anlass und Prüfer";
    public override string ColumnResult => "Ergebnis";
    public override string ColumnFound => "Befund";
    public override string NothingFound => "kein Mangel aufgezeichnet";
    public override string Renewals => "Erneuerte Teile";
    public override string Remedies => "Instandsetzungen und Änderungen";
    public override string Releases => "Freigaben nach einer Aussonderung";
    public override string Disposals => "Verbleib nach der Aussonderung";
    public override string NotInRecord => "keine aufgezeichnet";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Diese Karte enthält, was die Aufzeichnung des Prüfauftrags enthält. Prüfungen und Instandsetzungen, die nie "
            + "eingetragen wurden, stehen nicht darin.",
        "Das Ergebnis ist das der letzten Prüfung nach den geltenden Regeln. Von früheren Prüfungen ist die Beurteilung so "
            + "wiedergegeben, wie sie damals aufgezeichnet wurde.",
        "„Nicht erfasst“ heißt, dass die Aufzeichnung keinen solchen Wert enthält; es heißt nicht, dass es keinen gibt.",
    ];

    public override string RecordHasErrors(IReadOnlyList<string> codes) =>
        $"Die Aufzeichnung dieses Gegenstands hat Fehler ({string.Join(", ", codes)}). Auf das hier Gedruckte ist kein "
        + "Verlass, bis sie behoben sind.";

    public override string Years(int years) => years == 1 ? "1 Jahr" : $"{Printed.Count(years)} Jahre";

    public override string Months(int months) => months == 1 ? "jeden Monat" : $"alle {Printed.Count(months)} Monate";

    public override string Times(int times) => times == 1 ? "einmal" : $"{Printed.Count(times)}-mal";

    public override string Millimetres(decimal millimetres) => $"{Printed.Number(millimetres)}\u00A0mm";

    public override string Diameter(decimal nominal, decimal? percent) =>
        percent is { } p
            ? $"{Printed.Number(nominal)}\u00A0mm, mit {Printed.Number(p)}\u00A0% nach jeder Seite"
            : $"{Printed.Number(nominal)}\u00A0mm; Toleranz {CommonPhrases.Languages.German.NotRecorded}";

    public override string Sought(string? sought, LocalDate? until) =>
        $"gesucht: {Printed.Text(sought)}; nach eigener Entscheidung des Prüfers nicht mehr benutzen nach dem {Printed.Day(until)}";

    public override string MayRetie(Retying who) =>
        who switch
        {
            Core.Records.Retying.Maker => "nur der Hersteller",
            Core.Records.Retying.CompetentPerson => "eine sachkundige Person",
            _ => "der Benutzer",
        };

    public override string DeclarationLine(string? reference, LocalDate? on) => $"{Printed.Text(reference)}, {Printed.Day(on)}";

    public override string Conclusion(Conclusion? conclusion) =>
        conclusion switch
        {
            Core.Records.Conclusion.Fit => "damalige Beurteilung: gebrauchstauglich",
            Core.Records.Conclusion.Withdraw => "damalige Beurteilung: aus dem Gebrauch nehmen",
            _ => "Beurteilung nicht erfasst",
        };

    public override string NextBy(LocalDate day) => $"nächste spätestens am {Printed.Day(day)}";

    public override string Defect(string part, string description, string danger, string remedy) =>
        $"{part} – {description} ({danger}). Nötig: {remedy}.";

    public override string DangerNow => "jetzt eine Gefahr";

    public override string DangerLater(LocalDate? on) => $"könnte bis {Printed.Day(on)} eine Gefahr werden";

    public override string Diameters(int places, string smallest, string largest) =>
        places == 1
            ? $"Durchmesser an 1 Stelle: Mittel {smallest}\u00A0mm."
            : $"Durchmesser an {Printed.Count(places)} Stellen: Mittelwerte von {smallest} bis {largest}\u00A0mm.";

    public override string UnreadableDiameters => "Durchmesser wurden gemessen; kein Messwert ist lesbar.";

    public override string Test(string? what, string? result) => $"Erprobung: {Printed.Text(what)}: {Printed.Text(result)}.";

    public override string Event(string? what, LocalDate? on) =>
        $"Nach einem außergewöhnlichen Ereignis: {Printed.Text(what)}, am {Printed.Day(on)}.";

    public override string Remedy(LocalDate? on, string? what, string? by, string? evidence) =>
        $"{Printed.Day(on)}: {Printed.Text(what)}. Ausgeführt von {Printed.Text(by)}. Beleg: {Printed.Text(evidence)}.";

    public override string Release(LocalDate? on, string by, string? document, LocalDate? withdrawnOn, bool inError, string? grounds)
    {
        var withdrawn =
            document is not null ? $"durch {document}"
            : withdrawnOn is { } day ? $"am {Printed.Day(day)}"
            : "durch eine Prüfung in dieser Aufzeichnung";
        return $"{Printed.Day(on)}: freigegeben von {by}{(inError ? ", weil irrtümlich erfasst" : "")}. Ausgesondert "
            + $"{withdrawn}. Begründung: {Printed.Text(grounds)}.";
    }

    public override string Disposal(LocalDate? on, string what, string by) => $"{Printed.Day(on)}: {what}, von {by}.";
}
