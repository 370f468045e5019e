using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Wording;

public static partial class German
{
    internal sealed partial class Regimes : RegimePhrases
    {
        protected override RegimeWording Loler =>
            new()
            {
                Title = "Bericht über die gründliche Prüfung (thorough examination)",
                Law = "Lifting Operations and Lifting Equipment Regulations 1998 (SI 1998/2307), regulation 10(1)(b) und Schedule 1",
                ShortLaw = "SI 1998/2307",
                Examination = "gründliche Prüfung",
                Keys = "Kleine umrandete Nummern geben den Absatz des Schedule 1 zu SI 1998/2307 an, der die Angabe verlangt.",
                DutyNow = "Der Gegenstand darf vor Behebung des Mangels nicht benutzt werden: SI 1998/2307 regulation 10(3)(a).",
                DutyLater =
                    "Der Gegenstand darf nach dem angegebenen Zeitpunkt und vor Behebung des Mangels nicht benutzt werden: "
                    + "SI 1998/2307 regulation 10(3)(b).",
                NoticeLead =
                    "Wer eine gründliche Prüfung vornimmt, meldet dem Arbeitgeber unverzüglich jeden Mangel, der eine Gefahr "
                    + "für Personen ist oder werden könnte: regulation 10(1)(a) der Lifting Operations and Lifting Equipment "
                    + "Regulations 1998 (SI 1998/2307).",
                Authorities = new Dictionary<Recipient, string>
                {
                    [Recipient.HealthAndSafetyExecutive] =
                        "Health and Safety Executive (der Gegenstand ist gemietet oder geleast: SI 1998/2307 regulation 10(4))",
                    [Recipient.AuthorityForThePremises] =
                        "Aufsichtsbehörde des Ortes, an dem der Gegenstand geprüft wurde (SI 1998/2307 regulation 10(4))",
                },
                Bases = new Dictionary<Basis, string>
                {
                    [Basis.SixMonth] = "innerhalb einer Frist von 6 Monaten (regulation 9(3)(a)(i))",
                    [Basis.TwelveMonth] = "innerhalb einer Frist von 12 Monaten (regulation 9(3)(a)(ii))",
                    [Basis.Scheme] = "nach einem Prüfplan (regulation 9(3)(a)(iii))",
                    [Basis.Exceptional] = "nach außergewöhnlichen Umständen (regulation 9(3)(a)(iv))",
                    [Basis.FirstUse] =
                        "erste gründliche Prüfung, bevor der Gegenstand erstmals in Gebrauch genommen wird (regulation 9(1))",
                    [Basis.Installation] =
                        "erste gründliche Prüfung nach Einbau oder nach Zusammenbau an einem neuen Ort (regulation 9(2))",
                },
            };

        protected override RegimeWording LolerNorthernIreland =>
            Loler with
            {
                Law =
                    "Lifting Operations and Lifting Equipment Regulations (Northern Ireland) 1999 (SR 1999/304), regulation "
                    + "10 und Schedule 2",
                ShortLaw = "SR 1999/304",
                Keys =
                    "Kleine umrandete Nummern geben den Absatz des Schedule 2 zu SR 1999/304 an, der die Angabe verlangt; "
                    + "nach 8(a) sind sie aus dem Gedächtnis.",
                DutyNow =
                    "Der Gegenstand darf vor Behebung des Mangels nicht benutzt werden: SR 1999/304 regulation 10(3), aus dem Gedächtnis.",
                DutyLater =
                    "Der Gegenstand darf nach dem angegebenen Zeitpunkt und vor Behebung des Mangels nicht benutzt werden: "
                    + "SR 1999/304 regulation 10(3), aus dem Gedächtnis.",
                NoticeLead =
                    "Wer eine gründliche Prüfung vornimmt, meldet dem Arbeitgeber unverzüglich jeden Mangel, der eine Gefahr "
                    + "für Personen ist oder werden könnte: regulation 10 der Lifting Operations and Lifting Equipment "
                    + "Regulations (Northern Ireland) 1999 (SR 1999/304), aus dem Gedächtnis.",
                Authorities = new Dictionary<Recipient, string>
                {
                    [Recipient.EnforcingAuthority] =
                        "Die Aufsichtsbehörde (SR 1999/304 regulation 10, aus dem Gedächtnis; welche Behörde das ist, wurde "
                        + "nicht bestätigt)",
                },
            };

        protected override RegimeWording WorkAtHeight =>
            new()
            {
                Title = "Bericht über die wiederkehrende Inspektion",
                Law =
                    "Work at Height Regulations 2005 (SI 2005/735), regulation 12. Für diese Ausrüstung schreibt das Recht "
                    + "eine Aufzeichnung vor, nicht ihren Inhalt: die Angaben hier hat der Aussteller gewählt",
                ShortLaw = "SI 2005/735",
                Examination = "Inspektion",
                Keys = null,
                DutyNow =
                    "Der Gegenstand darf nicht benutzt werden, bevor der Mangel behoben ist. Persönliche Schutzausrüstung "
                    + "ist wirksam, gebrauchsfähig und in gutem Zustand zu halten: SI 1992/2966 regulation 7.",
                DutyLater = "Der Gegenstand darf nach dem angegebenen Zeitpunkt und vor Behebung des Mangels nicht benutzt werden.",
                NoticeLead =
                    "Die Inspektion ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. Dem Arbeitgeber "
                    + "wird er mit dieser Anzeige gemeldet.",
                Bases = new Dictionary<Basis, string>
                {
                    [Basis.SixMonth] = "innerhalb einer Frist von 6 Monaten",
                    [Basis.TwelveMonth] = "innerhalb einer Frist von 12 Monaten",
                    [Basis.Scheme] = "nach einem schriftlichen Plan",
                    [Basis.Exceptional] = "nach außergewöhnlichen Umständen (regulation 12(3))",
                    [Basis.FirstUse] = "erste Inspektion, bevor der Gegenstand erstmals in Gebrauch genommen wird",
                    [Basis.Installation] = "erste Inspektion nach Einbau oder Zusammenbau an neuer Stelle",
                },
            };

        protected override RegimeWording Periodic =>
            new()
            {
                Title = "Bericht über die wiederkehrende Prüfung",
                Law = "",
                ShortLaw = "",
                Examination = "wiederkehrende Prüfung",
                Keys = null,
                DutyNow =
                    "Der Gegenstand darf nicht benutzt werden, bevor eine befähigte Person bestätigt hat, dass der Mangel behoben ist.",
                DutyLater = "Der Gegenstand darf nach dem angegebenen Zeitpunkt und vor Behebung des Mangels nicht benutzt werden.",
                NoticeLead =
                    "Die wiederkehrende Prüfung ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. Dem "
                    + "Arbeitgeber oder Halter wird er mit dieser Anzeige gemeldet.",
                Bases = new Dictionary<Basis, string>
                {
                    [Basis.SixMonth] = "innerhalb einer Frist von 6 Monaten",
                    [Basis.TwelveMonth] = "innerhalb einer Frist von 12 Monaten",
                    [Basis.Scheme] = "nach einem schriftlichen Plan",
                    [Basis.Exceptional] = "nach außergewöhnlichen Umständen",
                    [Basis.FirstUse] = "erste Prüfung, bevor der Gegenstand erstmals in Gebrauch genommen wird",
                    [Basis.Installation] = "erste Prüfung nach Einbau oder Zusammenbau an neuer Stelle",
                },
            };

        protected override RegimeWording Europe =>
            Periodic with
            {
                Law =
                    "EN 365:2004, Abschnitt 4.4 (in nicht amtlicher Abschrift gesehen), für persönliche Schutzausrüstung "
                    + "gegen Absturz. Das Recht des Landes kann mehr verlangen",
                ShortLaw = "EN 365:2004",
            };

        protected override RegimeWording Germany =>
            Periodic with
            {
                Law = "Betriebssicherheitsverordnung, § 14, und DGUV Regel 112-198 (beide aus dem Gedächtnis)",
                ShortLaw = "BetrSichV § 14, DGUV Regel 112-198",
                DutyNow = "Der Gegenstand darf nicht benutzt werden, bevor ein Sachkundiger bestätigt hat, dass der Mangel behoben ist.",
            };

        protected override RegimeWording France =>
            Periodic with
            {
                Title = "Bericht über die allgemeine wiederkehrende Prüfung (vérification générale périodique)",
                Law = "Arrêté du 19 mars 1993, article 1, und arrêté du 1er mars 2004, articles 23 et 24",
                ShortLaw = "arrêtés du 19 mars 1993 et du 1er mars 2004",
                Examination = "allgemeine wiederkehrende Prüfung",
                NoticeLead =
                    "Die allgemeine wiederkehrende Prüfung ergab einen Mangel, der eine Gefahr für Personen ist oder werden "
                    + "könnte. Dem Arbeitgeber oder Halter wird er mit dieser Anzeige gemeldet.",
            };

        protected override RegimeWording AustraliaNewZealand =>
            Inspection with
            {
                Law = "AS/NZS 1891.4:2009, section 9 (in nicht amtlicher Abschrift gesehen)",
                ShortLaw = "AS/NZS 1891.4:2009",
            };

        protected override RegimeWording UnitedStates =>
            Inspection with
            {
                Law = "29 CFR 1910.140(c)(17) und (18), ANSI/ASSP Z359.2 und California Title 8 (alle aus dem Gedächtnis)",
                ShortLaw = "29 CFR 1910.140, ANSI/ASSP Z359.2",
            };

        protected override RegimeWording Unnamed =>
            WorkAtHeight with
            {
                Title = "Prüfbericht",
                Law = "Das Recht, nach dem geprüft wurde, ist nicht erfasst",
                ShortLaw = Words.Common.NotRecorded,
                Examination = "Prüfung",
                DutyNow = "Der Gegenstand darf nicht benutzt werden, bevor der Mangel behoben ist.",
                NoticeLead =
                    "Die Prüfung ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. Dem Arbeitgeber "
                    + "wird er mit dieser Anzeige gemeldet.",
            };

        protected override RegimeWording Added(Regime regime, string file) =>
            Periodic with
            {
                Law = $"{string.Join("; ", regime.Laws.InForce(null).Select(l => l.Cited))}. {Words.LawAndSources.Added(file)}",
                ShortLaw = $"{regime.Name} ({Words.LawAndSources.AddedShort(file)})",
                UsersOwn = Words.LawAndSources.UsersOwn,
            };

        private RegimeWording Inspection =>
            Periodic with
            {
                Title = "Bericht über die wiederkehrende Inspektion",
                Examination = "wiederkehrende Inspektion",
                NoticeLead =
                    "Die wiederkehrende Inspektion ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. "
                    + "Dem Arbeitgeber oder Halter wird er mit dieser Anzeige gemeldet.",
            };
    }
}
