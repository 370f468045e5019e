using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Certificate.Wording;

/// <inheritdoc />
internal sealed class German : CertificatePhrases
{
    public override string Title => "Konformitätserklärung des Prüfers zur Wiederinbetriebnahme";

    public override string Law =>
        "Erklärung des Prüfers über die Rückkehr in den Gebrauch nach einer Erneuerung. Inhalt wie in ISO/IEC "
        + "17050-1:2004, 6.1, (a) bis (h), aufgezählt";

    public override string NotTheMakers =>
        "Dies ist die eigene Erklärung des Prüfers über einen einzelnen Gegenstand, so wie geprüft. Sie ist nicht die "
        + "Konformitätserklärung des Herstellers, ersetzt sie nicht und ist kein Zulassungszeichen.";

    public override string Number => "Diese Erklärung";
    public override string Issuer => "Ausgestellt von";
    public override string Object => "Der Gegenstand";
    public override string Fitted => "Angebrachte Teile";
    public override string Statement => "Erklärung";
    public override string Requirements => "Womit er übereinstimmt";
    public override string Renewed => "Was erneuert wurde";
    public override string Removed => "Abgenommen";
    public override string FittedPart => "Angebracht";
    public override string Reason => "Grund";
    public override string DoneBy => "Ausgeführt von";
    public override string SupervisedBy => "Beaufsichtigt von";
    public override string DoneOn => "Am";
    public override string Document => "Nach dem Dokument des Herstellers";
    public override string NothingFitted => "nichts";
    public override string Limits => "Grenzen der Gültigkeit";
    public override string Issue => "Datum und Ort";
    public override string IssuedAt => "Prüfort:";
    public override string For => "Ausgestellt für (Arbeitgeber)";
    public override string MakerAndModel => "Hersteller, Modell";
    public override string SignedLead => "Unterschrieben am Tag und für den Ort der Ausstellung, wie oben angegeben:";
    public override string SignLead => "Unterschrieben, mit Ort und Datum der Unterschrift:";
    public override string Function => "die sachkundige Person, die den Gegenstand geprüft hat";
    public override string OtherFunction => "bestätigt für die sachkundige Person, die den Gegenstand geprüft hat";

    public override string Conforms(string item, LocalDate? on, string examiner) =>
        $"Der Gegenstand {item} mit den hier genannten angebrachten Teilen wurde nach der Erneuerung am {Printed.Day(on)} "
        + $"von {examiner} geprüft. So wie geprüft stimmt er mit dem unter (e) Aufgezählten überein und darf wieder in "
        + "Gebrauch genommen werden.";

    public override string ConformsUntil(LocalDate? until) =>
        $"Er darf bis {Printed.Day(until)} in Gebrauch bleiben; das ist der letzte Gebrauchstag.";

    public override string ByMaker(string item, string document) => $"{item}: Anleitung des Herstellers, {document}";

    public override string Standards(string standards) =>
        $"gekennzeichnet mit {standards} (die Zeichen wurden gelesen; nach diesen Normen wurde der Gegenstand nicht geprüft)";

    public override string ExaminedUnder(string law) => $"geprüft wurde nach: {law}";

    public override string LimitState(LocalDate? on) =>
        $"Sie gilt für den Zustand des Gegenstands am {Printed.Day(on)} und für keinen späteren.";

    public override string LimitNext(LocalDate? next) =>
        $"Sie endet, wenn die nächste Prüfung fällig wird: spätestens am {Printed.Day(next)}.";

    public override string LimitUntil(LocalDate? until) => $"Sie endet nach dem {Printed.Day(until)}, dem letzten Gebrauchstag.";

    public override string LimitEnd(LocalDate? end) =>
        $"Nach den aufgezeichneten Grenzen endet der Gebrauch des Gegenstands nach dem {Printed.Day(end)}.";

    public override string LimitEvents =>
        "Sie endet sofort, wenn der Gegenstand verändert oder ein anderes Teil angebracht wird, und nach einem Sturz, "
        + "einer starken Belastung oder der Berührung mit Säge, Hitze oder Chemikalien.";
}
