using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Certificate.Wording;

/// <inheritdoc />
internal sealed class French : CertificatePhrases
{
    public override string Title => "Déclaration du vérificateur pour remise en service";

    public override string Law =>
        "Déclaration de remise en service, faite par le vérificateur après un renouvellement. Contenu selon la liste de "
        + "l’ISO/IEC 17050-1:2004, 6.1, (a) à (h)";

    public override string NotTheMakers =>
        "Ceci est la déclaration propre du vérificateur sur un seul équipement, tel que vérifié. Elle n’est pas la "
        + "déclaration de conformité du fabricant, ne la remplace pas et n’est pas une marque d’agrément.";

    public override string Number => "Cette déclaration";
    public override string Issuer => "Émise par";
    public override string Object => "L’équipement";
    public override string Fitted => "Pièces montées";
    public override string Statement => "Déclaration";
    public override string Requirements => "À quoi il est conforme";
    public override string Renewed => "Ce qui a été renouvelé";
    public override string Removed => "Retiré";
    public override string FittedPart => "Monté";
    public override string Reason => "Motif";
    public override string DoneBy => "Fait par";
    public override string SupervisedBy => "Sous la surveillance de";
    public override string DoneOn => "Le";
    public override string Document => "Selon le document du fabricant";
    public override string NothingFitted => "rien";
    public override string Limits => "Limites de validité";
    public override string Issue => "Date et lieu";
    public override string IssuedAt => "lieu de la vérification\u00A0:";
    public override string For => "Émise pour (employeur)";
    public override string MakerAndModel => "Fabricant, modèle";
    public override string SignedLead => "Signé le jour et pour le lieu d’émission indiqués ci-dessus\u00A0:";
    public override string SignLead => "Signé, avec le lieu et la date de signature\u00A0:";
    public override string Function => "la personne qualifiée qui a vérifié l’équipement";
    public override string OtherFunction => "qui authentifie pour la personne qualifiée qui a vérifié l’équipement";

    public override string Conforms(string item, LocalDate? on, string examiner) =>
        $"L’équipement {item}, avec les pièces montées nommées ici, a été vérifié le {Printed.Day(on)} par {examiner} "
        + "après le renouvellement. Tel que vérifié, il est conforme à ce qui est énuméré sous (e) et peut être remis en "
        + "service.";

    public override string ConformsUntil(LocalDate? until) =>
        $"Il peut rester en service jusqu’au {Printed.Day(until)}, dernier jour d’utilisation.";

    public override string ByMaker(string item, string document) => $"{item}\u00A0: la notice du fabricant, {document}";

    public override string Standards(string standards) =>
        $"marqué {standards} (les marques ont été lues\u00A0; l’équipement n’a pas été essayé selon ces normes)";

    public override string ExaminedUnder(string law) => $"la vérification a été faite selon\u00A0: {law}";

    public override string LimitState(LocalDate? on) =>
        $"Elle porte sur l’état de l’équipement le {Printed.Day(on)}, et sur aucun état ultérieur.";

    public override string LimitNext(LocalDate? next) =>
        $"Elle prend fin quand la prochaine vérification est due, au plus tard le {Printed.Day(next)}.";

    public override string LimitUntil(LocalDate? until) => $"Elle prend fin après le {Printed.Day(until)}, dernier jour d’utilisation.";

    public override string LimitEnd(LocalDate? end) =>
        $"Les limites enregistrées mettent fin au service de l’équipement après le {Printed.Day(end)}.";

    public override string LimitEvents =>
        "Elle prend fin aussitôt si l’équipement est modifié, si une autre pièce est montée, ou après une chute, une "
        + "forte sollicitation, ou le contact avec une scie, la chaleur ou un produit chimique.";
}
