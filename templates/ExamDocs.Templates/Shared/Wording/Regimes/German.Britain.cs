using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Shared.Wording.Regimes;

// Great Britain and Northern Ireland.
internal sealed partial class German
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
                "Nach dem angegebenen Zeitpunkt darf der Gegenstand nicht benutzt werden, solange der Mangel nicht behoben ist: "
                + "SI 1998/2307 regulation 10(3)(b).",
            NoticeLead =
                "Wer eine gründliche Prüfung vornimmt, hat dem Arbeitgeber unverzüglich jeden Mangel zu melden, der nach "
                + "Ansicht des Prüfers eine Gefahr für Personen ist oder werden könnte: regulation 10(1)(a) der Lifting "
                + "Operations and Lifting Equipment "
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
                [Basis.SixMonth] = "in der Frist von 6 Monaten (regulation 9(3)(a)(i))",
                [Basis.TwelveMonth] = "in der Frist von 12 Monaten (regulation 9(3)(a)(ii))",
                [Basis.Scheme] = "nach einem Prüfplan (regulation 9(3)(a)(iii))",
                [Basis.Exceptional] = "nach außergewöhnlichen Umständen (regulation 9(3)(a)(iv))",
                [Basis.FirstUse] = "erste gründliche Prüfung vor der ersten Inbetriebnahme (regulation 9(1))",
                [Basis.Installation] = "erste gründliche Prüfung nach Einbau oder nach Zusammenbau an einem neuen Ort (regulation 9(2))",
            },
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "Frist von 6 Monaten (regulation 9(3)(a)(i))",
                [Basis.TwelveMonth] = "Frist von 12 Monaten (regulation 9(3)(a)(ii))",
                [Basis.Scheme] = "Prüfplan (regulation 9(3)(a)(iii))",
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
                + "nach 8(a) wurden sie nicht am Original geprüft.",
            DutyNow = "Der Gegenstand darf vor Behebung des Mangels nicht benutzt werden: SR 1999/304 regulation 10(3).",
            DutyLater =
                "Nach dem angegebenen Zeitpunkt darf der Gegenstand nicht benutzt werden, solange der Mangel nicht behoben ist: "
                + "SR 1999/304 regulation 10(3).",
            NoticeLead =
                "Wer eine gründliche Prüfung vornimmt, hat dem Arbeitgeber unverzüglich jeden Mangel zu melden, der nach "
                + "Ansicht des Prüfers eine Gefahr für Personen ist oder werden könnte: regulation 10 der Lifting "
                + "Operations and Lifting Equipment "
                + "Regulations (Northern Ireland) 1999 (SR 1999/304).",
            Authorities = new Dictionary<Recipient, string>
            {
                [Recipient.EnforcingAuthority] =
                    "Die Aufsichtsbehörde (SR 1999/304 regulation 10; welche Behörde das ist, wurde " + "nicht bestätigt)",
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
            DutyLater = "Nach dem angegebenen Zeitpunkt darf der Gegenstand nicht benutzt werden, solange der Mangel nicht behoben ist.",
            NoticeLead =
                "Die Inspektion ergab einen Mangel, der eine Gefahr für Personen ist oder werden könnte. Dem Arbeitgeber "
                + "wird er hiermit gemeldet.",
            Bases = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "in der Frist von 6 Monaten",
                [Basis.TwelveMonth] = "in der Frist von 12 Monaten",
                [Basis.Scheme] = "nach einem schriftlichen Plan",
                [Basis.Exceptional] = "nach außergewöhnlichen Umständen (regulation 12(3))",
                [Basis.FirstUse] = "erste Inspektion vor der ersten Inbetriebnahme",
                [Basis.Installation] = "erste Inspektion nach Einbau oder Zusammenbau an neuer Stelle",
            },
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "Frist von 6 Monaten",
                [Basis.TwelveMonth] = "Frist von 12 Monaten",
                [Basis.Scheme] = "schriftlicher Plan",
            },
        };
}
