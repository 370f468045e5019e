using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Notice.Wording;

/// <inheritdoc />
internal sealed class French : NoticePhrases
{
    public override string Title => "Avis de défectuosité";
    public override string ImminentRisk => "Risque existant ou imminent de blessure grave";
    public override string Recipients => "À";
    public override string Employer => "Employeur";
    public override string Owner => "Propriétaire (loueur, crédit-bailleur)";
    public override string AuthorityHeading => "Une copie du rapport va dès que possible à l’autorité compétente";
    public override string AuthorityRecorded => "Autorité enregistrée\u00A0:";
    public override string AuthorityMissing => "nom et adresse de son bureau\u00A0: non renseignés";
    public override string Premises => "Lieu de la vérification";
    public override string Item => "L’équipement";
    public override string Defects => "Le défaut";
    public override string Duty => "Ce que l’employeur doit faire";
    public override string Why => "Motif";
    public override string Told => "Qui a été informé, comment et quand";
    public override string ToldWhom => "Qui";
    public override string ToldHow => "Comment";
    public override string ToldOn => "Quand";
    public override string For => "Défaut";
    public override string GivenBy => "Remis par le vérificateur\u00A0:";
    public override string ReceivedBy => "Reçu pour l’employeur\u00A0:";
    public override string NoDetail => "Aucun défaut n’est décrit dans l’enregistrement\u00A0; les motifs sont ceux-ci\u00A0:";

    public override string KeepApart => "Retirer l’équipement du service, l’étiqueter et le tenir à l’écart de l’équipement en service.";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Cet avis signale un danger sur-le-champ. Il ne remplace pas le rapport que la loi demande.",
        "La lettre et le chiffre devant un motif nomment la règle sur laquelle il repose\u00A0: W retire l’équipement, D "
            + "fixe son dernier jour d’utilisation, U dit ce que l’enregistrement laisse en suspens.",
        "«\u00A0Non renseigné\u00A0» veut dire que l’enregistrement ne contient pas cette valeur. Ce n’est pas une raison d’attendre.",
    ];

    public override string WithdrawnOn => "Retiré le";
    public override string PremisesUnseen => "Lieu";
    public override string GivenUnseenBy => "Remis par\u00A0:";

    public override string TakenOut(LocalDate? day, string notice) =>
        $"Retiré le {Printed.Day(day)} par l’avis de sécurité {notice} du fabricant. Personne n’a vérifié l’équipement.";

    public override string DoNotUse => "Ne pas utiliser";

    public override string DoNotUseAfter(LocalDate? lastDay) => $"Ne pas utiliser après le {Printed.Day(lastDay)}";

    public override string LastDay(LocalDate? lastDay) =>
        $"Le dernier jour d’utilisation est le {Printed.Day(lastDay)}. Ne pas l’utiliser après ce jour, quelles que "
        + "soient les autres échéances.";

    public override string LawNotKnown =>
        "La loi selon laquelle il a été vérifié n’est pas renseignée ou pas connue\u00A0: chercher aussitôt si une "
        + "autorité doit aussi être informée.";

    public override string ReportHeldBack =>
        "Aucun rapport sur cet équipement n’est émis avant correction de son enregistrement. Le corriger aussitôt\u00A0: "
        + "le devoir d’envoyer la copie n’attend pas.";
}
