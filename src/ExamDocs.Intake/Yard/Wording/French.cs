using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Intake.Yard.Wording;

/// <inheritdoc />
internal sealed partial class French : YardPhrases
{
    public override string Language => "fr";

    public override Terms Terms => Terms.French;

    public override string Title => "Enregistrer une visite";
    public override string NoScript =>
        "Ce téléphone ou ce navigateur n’exécute pas de scripts dans les fichiers\u00A0: le formulaire n’y est pas "
        + "utilisable. Mettez le même fichier à une adresse https de votre entreprise et ouvrez-le de là, ou ouvrez-le "
        + "dans un navigateur qui exécute les scripts. Rien n’est envoyé nulle part\u00A0: une fois ouvert, le "
        + "formulaire marche hors ligne.";
    public override string Opening =>
        "Ouverture du formulaire. Si cette ligne reste, le navigateur n’exécute pas de scripts dans les "
        + "fichiers\u00A0: ouvrez le même fichier depuis une adresse https de votre entreprise.";
    public override string Caution => "La notice du fabricant, la loi locale et le jugement de la personne qualifiée l’emportent.";
    public override string Tabs => "Pages du formulaire";
    public override string Visit => "Visite";
    public override string Items => "Équipements";
    public override string Save => "Fichier";
    public override string Choose => "choisir";
    public override string Yes => "Oui";
    public override string No => "Non";
    public override string TakeBack => "Retirer";
    public override string More => "Plus, si nécessaire";
    public override string Missing => "{0}\u00A0: manque";
    public override string NotANumber => "Ce n’est pas un nombre en chiffres simples. La saisie reste telle quelle.";

    public override string OnlyHere => "Seulement sur ce téléphone. Encore dans aucun fichier.";
    public override string ChangedSince => "Seulement sur ce téléphone\u00A0: ce que vous avez changé depuis {0}.";
    public override string SavedAs => "Remis au navigateur sous le nom {0}. Vérifiez que le fichier est là avant de quitter le téléphone.";
    public override string NotKept =>
        "NON GARDÉ\u00A0: le navigateur n’a pas pu garder votre dernière saisie. Enregistrez le fichier maintenant, et "
        + "ne fermez pas cette page avant.";
    public override string MayBeCleared =>
        "Le navigateur n’a pas promis de garder ceci. Il peut l’effacer si la place manque\u00A0: enregistrez souvent " + "un fichier.";
    public override string NoBase =>
        "Ce navigateur ne garde rien pour cette page\u00A0: votre saisie serait perdue. Ouvrez le formulaire dans une "
        + "fenêtre ordinaire, non privée, ou ouvrez le même fichier depuis une adresse https de votre entreprise.";
    public override string NoLocks =>
        "Ce navigateur ne peut pas tenir séparés deux onglets du formulaire. Ouvrez le fichier même dans un navigateur "
        + "à jour, ou depuis une adresse https de votre entreprise.";
    public override string OpenElsewhere =>
        "Ce formulaire est ouvert dans un autre onglet. Continuez-y, ou fermez-le\u00A0: le formulaire s’ouvre alors "
        + "ici avec tout ce qui fut saisi.";

    public override string Reference =>
        "Référence de cette visite\u00A0: {0}. Elle est faite une fois et reste\u00A0; un fichier envoyé deux fois " + "compte une fois.";
    public override string Regime => "Réglementation";
    public override string EmployerName => "Employeur\u00A0: nom";
    public override string EmployerAddress => "Employeur\u00A0: adresse";
    public override string PremisesName => "Établissement\u00A0: nom";
    public override string PremisesAddress => "Établissement\u00A0: adresse";
    public override string HiredFromName => "Loué à\u00A0: nom";
    public override string HiredFromAddress => "Loué à\u00A0: adresse";
    public override string EnforcingAuthorityName => "Autorité de contrôle\u00A0: nom";
    public override string EnforcingAuthorityAddress => "Autorité de contrôle\u00A0: adresse";
    public override string ExaminedOn => "Jour de l’examen";
    public override string ReportedOn => "Jour du rapport";
    public override string DayNotAfter =>
        "Le formulaire connaît un examen du {0}. De plusieurs examens d’un équipement, celui du dernier jour "
        + "décide\u00A0: vérifiez ce jour.";
    public override string Examiner => "Vérificateur";
    public override string Basis => "Motif de l’examen";
    public override string SchemeReference => "Plan\u00A0: référence";
    public override string SchemeAuthor => "Plan\u00A0: établi par";
    public override string SchemeMonths => "Plan\u00A0: mois";
    public override string EventWhat => "Ce qui s’est passé";
    public override string EventOn => "Quand cela s’est passé";
    public override string AddPerson => "Ajouter une personne";
    public override string Person => "Personne {0}";
    public override string PersonName => "Nom";
    public override string PersonAddress => "Adresse";
    public override string PersonQualifications => "Qualifications";
    public override string SelfEmployed => "Indépendant\u00A0?";
    public override string PersonsEmployer => "Employeur de cette personne\u00A0: nom, si elle n’est pas indépendante";
    public override string PersonsEmployerAddress => "Employeur de cette personne\u00A0: adresse";
    public override string ToItems => "Aux équipements";

    public override string NoItems => "Il n’y a encore aucun équipement.";
    public override string NotBegun => "pas commencé";
    public override string AllRecorded => "tout enregistré";
    public override string Answered => "{0} réponses sur {1}";
    public override string AddItem => "Ajouter un équipement";
    public override string NewItem => "Nouvel équipement";
    public override string Twice => "Deux équipements ont l’identifiant {0}. Il en faut un pour chacun.";
    public override string ToTheEnd => "À la fin";
}
