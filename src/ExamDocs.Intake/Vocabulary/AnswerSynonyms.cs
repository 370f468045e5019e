using static ExamDocs.Intake.Vocabulary.Language;

namespace ExamDocs.Intake.Vocabulary;

/// <summary>
/// What people write for an answer, a conclusion, yes and no. "Pass" stands for nothing here: it answers no one criterion. No word
/// for a good answer is a slip of the finger away from one for a bad answer; a test goes through all of them.
/// </summary>
internal static class AnswerSynonyms
{
    public static IReadOnlyList<Synonym> All { get; } =
    [
        new("clear", English, "ok", "o.k.", "okay", "all clear", "in order", "nothing found", "nothing to note"),
        new("clear", German, "in Ordnung", "i.O.", "i. O.", "einwandfrei", "ohne Befund", "o.B.", "unauffällig", "alles klar"),
        new("clear", French, "RAS", "R.A.S.", "rien à signaler", "en ordre", "sans remarque", "en bon état"),
        new("noted", English, "worth noting", "noteworthy", "to be noted"),
        new("noted", German, "vermerkt", "bemerkt", "notiert", "beachtenswert"),
        new("noted", French, "noté", "notée", "à noter", "constaté", "constatée"),
        new("doubt", English, "in doubt", "unsure", "not sure", "uncertain", "questionable"),
        new("doubt", German, "Zweifel", "zweifelhaft", "im Zweifel", "fraglich", "unsicher", "bedenklich"),
        new("doubt", French, "doute", "douteux", "douteuse", "en doute", "incertain", "incertaine"),
        new("defect", English, "fault", "faulty", "fail", "failed", "not ok", "not in order", "damaged"),
        new("defect", German, "Mangel", "Mängel", "mangelhaft", "defekt", "schadhaft", "beschädigt", "nicht in Ordnung", "nicht ok"),
        new("defect", French, "défaut", "défauts", "défectueux", "défectueuse", "endommagé", "endommagée", "défaillant"),
        new("no-sign", English, "no signs", "no sign found", "no sign of it", "nobody to ask"),
        new("no-sign", German, "kein Anzeichen", "keine Anzeichen", "keine Anzeichen gefunden", "niemand zu fragen"),
        new("no-sign", French, "aucun signe", "pas de signe", "aucun signe trouvé", "personne à interroger"),
        new("not-examined", English, "not inspected", "not checked", "not looked at", "unexamined", "not tested"),
        new("not-examined", German, "nicht geprüft", "ungeprüft", "nicht untersucht", "nicht kontrolliert"),
        new("not-examined", French, "non examiné", "non examinée", "non vérifié", "non vérifiée", "non contrôlé", "pas examiné"),
        new("not-applicable", English, "n/a", "n.a.", "n. a.", "does not apply", "not relevant"),
        new("not-applicable", German, "entfällt", "nicht anwendbar", "nicht zutreffend", "trifft nicht zu"),
        new("not-applicable", French, "sans objet", "non applicable", "ne s'applique pas", "pas applicable"),
        new("fit", English, "fit for use", "fit for service", "fit for further use", "may stay in service"),
        new("fit", German, "einsatzbereit", "darf in Betrieb bleiben", "weiter einsetzbar"),
        new("fit", French, "bon pour le service", "bonne pour le service", "peut rester en service"),
        new("withdraw", English, "withdrawn", "withdraw from service", "withdrawn from service", "take out of service", "unfit", "scrap"),
        new("withdraw", English, "out of service", "remove from service", "do not use"),
        new("withdraw", German, "aussondern", "ausgesondert", "außer Betrieb", "außer Betrieb nehmen", "untauglich", "ablegereif"),
        new("withdraw", French, "retirer", "à retirer", "retiré", "retirée", "retirer du service", "hors service", "inapte", "rebut"),
        new("withdraw", French, "mettre au rebut", "à mettre au rebut"),
        new("yes", English, "y", "true"),
        new("yes", German, "ja", "j", "wahr"),
        new("yes", French, "oui", "vrai"),
        new("no", English, "n", "false"),
        new("no", German, "nein", "falsch"),
        new("no", French, "non", "faux"),
    ];
}
