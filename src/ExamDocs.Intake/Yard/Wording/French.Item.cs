namespace ExamDocs.Intake.Yard.Wording;

/// <content>Words about one item, and about the end of the visit.</content>
internal sealed partial class French
{
    public override string Id => "Identifiant";
    public override string IdHint => "Tel que le propriétaire le marque\u00A0; jamais deux pareils.";
    public override string Category => "Catégorie";
    public override string Description => "Désignation";
    public override string Maker => "Fabricant";
    public override string Model => "Modèle";
    public override string PartNumber => "Référence de pièce";
    public override string Serial => "Numéro de série";
    public override string OwnersMark => "Marque du propriétaire";
    public override string Manufactured => "Fabriqué";
    public override string Purchased => "Acheté";
    public override string FirstUsed => "Première utilisation";
    public override string ObsoleteOn => "Fin de vie imprimée dessus";
    public override string LastExamined => "Dernière vérification approfondie";
    public override string PartialDate => "2026-05-20, ou 2026-05, ou 2026";
    public override string Purpose => "Destination";
    public override string Status => "Où il est";
    public override string FittedTo => "Monté sur";
    public override string Load => "Charge maximale d’utilisation";
    public override string Unit => "Unité";
    public override string NotMarked => "aucune n’est marquée";
    public override string LoadBasis => "D’où vient la charge";
    public override string Particulars => "Particularités de cet équipement";
    public override string Limits => "Limites du fabricant";
    public override string LimitsHint =>
        "Le formulaire ne connaît aucune limite de ce fabricant et de ce modèle. Tapez ce que dit la notice du "
        + "fabricant, et rien d’autre.";
    public override string SourceTitle => "Document du fabricant\u00A0: titre";
    public override string SourceRevision => "Document du fabricant\u00A0: révision";
    public override string SourcePage => "Document du fabricant\u00A0: page";
    public override string MaxUseYears => "Années au plus depuis la première utilisation";
    public override string MaxStorageYears => "Années de stockage au plus avant la première utilisation";
    public override string MaxAgeYears => "Années au plus depuis la fabrication";
    public override string IntervalMonths => "Mois au plus entre examens";
    public override string NominalDiameterMm => "Diamètre nominal, mm";
    public override string DiameterTolerancePercent => "Tolérance du diamètre, %";
    public override string NoLimit => "Le fabricant déclare qu’il n’y a pas de limite de durée";
    public override string LastExaminedOn => "Dernier examen\u00A0: {0}.";
    public override string NoDay => "jour non enregistré";
    public override string FitThen => "Conclusion du vérificateur alors\u00A0: maintenu en service.";
    public override string WithdrawnThen =>
        "Le vérificateur l’a alors RETIRÉ DU SERVICE. S’il n’a pas été libéré depuis, il reste hors service. Ce "
        + "formulaire ne peut pas le libérer.";
    public override string WithdrawnLast => "retiré la dernière fois";
    public override string NoConclusionThen => "Aucune conclusion n’a été enregistrée.";
    public override string DefectsThen => "Défauts enregistrés alors\u00A0:";
    public override string NextItem => "Équipement suivant\u00A0: {0}";
    public override string SaveAndGoOn => "Enregistrer un fichier. {0}";

    public override string Criteria => "Critères";
    public override string HowExamined => "{0} sur {1}. Moyen\u00A0: {2}";
    public override string LastTime => "La dernière fois, {0}\u00A0: {1}";
    public override string AddNote => "Ajouter une remarque";
    public override string Note => "Remarque";
    public override string NoteNeeded => "Cette réponse demande une remarque.";
    public override string NoteMissing => "{0}\u00A0: la remarque manque";
    public override string Unanswered => "{0} sans réponse\u00A0: {1}";
    public override string AddPhoto => "Ajouter une photo";
    public override string Photo => "Photo de ce constat";
    public override string RemovePhoto => "Retirer la photo";
    public override string PhotoRefused => "Cette image n’a pas pu être lue ou gardée. Reprenez-la en JPEG.";
    public override string TheDefect => "Le défaut";
    public override string DefectPart => "Partie";
    public override string DefectDescription => "Ce qui ne va pas";
    public override string DefectRemedy => "Réparation, renouvellement ou modification nécessaire";
    public override string DefectMissing => "{0}\u00A0: non enregistré du défaut\u00A0: {1}";
    public override string DefectKept =>
        "Ce que vous avez écrit d’un défaut est gardé ici, mais n’est pas dans le fichier tant que la réponse n’est " + "pas défaut.";
    public override string Danger => "Est-ce un danger pour les personnes\u00A0?";
    public override string DangerNow => "C’est un danger maintenant";
    public override string DangerLater => "Cela pourrait devenir un danger";
    public override string BecomesDangerOn => "Pourrait devenir un danger d’ici au";
    public override string BecomesDangerHint => "La veille est le dernier jour d’emploi.";
    public override string ImminentRisk => "Risque existant ou imminent de blessure grave\u00A0?";
    public override string ToldWhom => "Qui vous avez prévenu";
    public override string ToldHow => "Comment";
    public override string ToldOn => "Quand";

    public override string Diameters => "Diamètres";
    public override string DiametersHint =>
        "Deux mesures à angle droit à chaque endroit. La position se compte depuis l’extrémité de référence.";
    public override string Station => "Endroit {0}, en mm";
    public override string Position => "Position";
    public override string FirstReading => "Mesure 1";
    public override string SecondReading => "Mesure 2";
    public override string LastMean => "Moyenne la dernière fois\u00A0: {0} mm";
    public override string AddStation => "Ajouter un endroit";

    public override string Conclusion => "Conclusion";
    public override string ConclusionAsked => "Peut-il rester en service\u00A0?";
    public override string ConclusionHint => "Votre propre conclusion. Le programme la contrôle, et n’est jamais plus indulgent que vous.";
    public override string ConclusionMissing => "La conclusion manque";
    public override string Fit => "Maintenu en service";
    public override string Withdraw => "À retirer du service";
    public override string NextBy => "Prochain examen au plus tard";
    public override string NextByHint => "Seulement pour l’avancer sur ce que demandent la loi et le fabricant.";
    public override string OwnRegime => "Réglementation de cet équipement, si ce n’est pas celle de la visite";
    public override string TestDescription => "Essai effectué";
    public override string TestResult => "Résultat de l’essai";
    public override string Hardware => "Pièce métallique sur laquelle il coulisse";
    public override string Ground => "Terrain";
    public override string Use => "Emploi";
    public override string UserMassKg => "Masse de l’utilisateur, kg";

    public override string StillMissing => "Ce qui manque encore";
    public override string NothingMissing => "Chaque équipement a ses réponses et sa conclusion.";
    public override string DecidesNothing =>
        "Ce formulaire ne décide rien. examdocs check FICHIER dit ce qui ne va pas et ce qui en résulte.";
    public override string PhotosWithin =>
        "{0} réponses ont une photo. Le fichier est une archive (.zip)\u00A0: décompressez-la et gardez les photos à "
        + "côté de l’enregistrement.";
    public override string SaveFile => "Enregistrer le fichier";
    public override string SendIt =>
        "Chaque fichier contient toute la visite jusque-là\u00A0: le dernier suffit. Envoyez-le à qui émet les " + "documents.";
    public override string StartAnother => "Commencer une autre visite avec ce formulaire";
    public override string OtherVisits => "Autres visites sur ce téléphone";
}
