using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.Templates.Shared.Wording.LawAndSources;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Regimes;

/// <inheritdoc />
internal sealed partial class German : RegimePhrases
{
    public override string Overdue(LocalDate due, string basis) =>
        $"überfällig: die Prüfung war bis {Printed.Day(due)} fällig; Grundlage: {basis}";

    public override string LastNotKnown(string basis) => $"{basis}; wann zuletzt geprüft wurde, ist nicht aufgezeichnet";

    protected override RegimeWording Periodic =>
        new()
        {
            Title = "Bericht über die wiederkehrende Prüfung",
            Law = "",
            ShortLaw = "",
            Examination = "wiederkehrende Prüfung",
            Keys = null,
            DutyNow = "Der Gegenstand darf nicht benutzt werden, bevor eine sachkundige Person bestätigt hat, dass der Mangel behoben ist.",
            DutyLater = "Nach dem angegebenen Zeitpunkt darf der Gegenstand nicht benutzt werden, solange der Mangel nicht behoben ist.",
            NoticeLead =
                "Die wiederkehrende Prüfung ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. Dem "
                + "Arbeitgeber oder Halter wird er hiermit gemeldet.",
            Bases = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "in der Frist von 6 Monaten",
                [Basis.TwelveMonth] = "in der Frist von 12 Monaten",
                [Basis.Scheme] = "nach einem schriftlichen Plan",
                [Basis.Exceptional] = "nach außergewöhnlichen Umständen",
                [Basis.FirstUse] = "erste Prüfung vor der ersten Inbetriebnahme",
                [Basis.Installation] = "erste Prüfung nach Einbau oder Zusammenbau an neuer Stelle",
            },
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "Frist von 6 Monaten",
                [Basis.TwelveMonth] = "Frist von 12 Monaten",
                [Basis.Scheme] = "schriftlicher Plan",
            },
        };

    protected override RegimeWording Europe =>
        Periodic with
        {
            Law =
                "EN 365:2004, Abschnitt 4.4, für persönliche Schutzausrüstung " + "gegen Absturz. Das Recht des Landes kann mehr verlangen",
            ShortLaw = "EN 365:2004",
            Title = "Bericht über die regelmäßige Überprüfung",
            Examination = "regelmäßige Überprüfung",
            NoticeLead =
                "Die regelmäßige Überprüfung ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. Dem "
                + "Arbeitgeber oder Halter wird er hiermit gemeldet.",
            SignsEachEntry = true,
        };

    protected override RegimeWording Germany =>
        Periodic with
        {
            Law = "§\u00A014 Betriebssicherheitsverordnung; PSA-Benutzungsverordnung; DGUV Regel 112-198",
            ShortLaw = "§\u00A014 BetrSichV, DGUV Regel 112-198",
            SignsEachEntry = true,
            ForTheKeeper =
            [
                "Wechselt der Einsatzort, muss dort ein Nachweis der letzten Prüfung vorhanden sein (§\u00A014 Abs.\u00A07 BetrSichV).",
                "Wird dieses Dokument nur elektronisch weitergegeben, braucht es eine elektronische Signatur "
                    + "(§\u00A014 Abs.\u00A07 BetrSichV, "
                    + "TRBS 1201 8.3.1).",
                "Die Prüffrist legt der Arbeitgeber fest (§\u00A014 Abs.\u00A02 BetrSichV); das hier genannte Datum ist das späteste. Eine "
                    + "Nachfrist von zwei Monaten gibt es nicht.",
            ],
        };

    protected override RegimeWording France =>
        Periodic with
        {
            Title = "Bericht über die allgemeine wiederkehrende Prüfung (vérification générale périodique)",
            Law = "Arrêté du 19 mars 1993, article 1, und arrêté du 1er mars 2004, articles 23 et 24",
            ShortLaw = "arrêtés du 19 mars 1993 et du 1er mars 2004",
            Examination = "allgemeine wiederkehrende Prüfung",
            ForTheKeeper =
            [
                "Dem Sicherheitsregister (registre de sécurité) beizufügen (Code du travail R4323-101 und R4323-102).",
                "Berichte fünf Jahre aufbewahren, und stets die beiden letzten (Code du travail D4711-3).",
                "Der inspecteur du travail kann die Frist verkürzen.",
            ],
            PassingOn =
                "In Frankreich darf gebrauchte Schutzausrüstung nicht ohne Weiteres weitergegeben werden (Code du travail R4312-8): vor "
                + "Verkauf, Vermietung oder Verleih Rechtsrat einholen. Diese Erklärung ist nicht die Bescheinigung, die dafür nötig ist.",
            NoticeLead =
                "Die allgemeine wiederkehrende Prüfung ergab einen Mangel, der eine Gefahr für Personen ist oder werden "
                + "könnte. Dem Arbeitgeber oder Halter wird er hiermit gemeldet.",
        };

    protected override RegimeWording AustraliaNewZealand =>
        Inspection with
        {
            Law = "AS/NZS 1891.4:2009, section 9",
            ShortLaw = "AS/NZS 1891.4:2009",
        };

    protected override RegimeWording UnitedStates =>
        Inspection with
        {
            Law = "29 CFR 1910.140(c)(17) und (18), ANSI/ASSP Z359.2 und California Title 8",
            ShortLaw = "29 CFR 1910.140, ANSI/ASSP Z359.2",
        };

    protected override RegimeWording Unnamed =>
        WorkAtHeight with
        {
            Title = "Prüfbericht",
            Law = "Das Recht, nach dem geprüft wurde, ist nicht erfasst",
            ShortLaw = CommonPhrases.Languages.German.NotRecorded,
            Examination = "Prüfung",
            DutyNow = "Der Gegenstand darf nicht benutzt werden, bevor der Mangel behoben ist.",
            NoticeLead =
                "Die Prüfung ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. Dem Arbeitgeber "
                + "wird er hiermit gemeldet.",
        };

    protected override RegimeWording Added(Regime regime, string file) =>
        Periodic with
        {
            Law =
                $"{string.Join("; ", regime.Laws.InForce(null).Select(l => l.Cited))}. "
                + $"{LawAndSourcesPhrases.Languages.German.Added(file)}",
            ShortLaw = $"{regime.Name} ({LawAndSourcesPhrases.Languages.German.AddedShort(file)})",
            UsersOwn = LawAndSourcesPhrases.Languages.German.UsersOwn,
        };

    private RegimeWording Inspection =>
        Periodic with
        {
            Title = "Bericht über die wiederkehrende Inspektion",
            Examination = "wiederkehrende Inspektion",
            NoticeLead =
                "Die wiederkehrende Inspektion ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. "
                + "Dem Arbeitgeber oder Halter wird er hiermit gemeldet.",
        };
}
