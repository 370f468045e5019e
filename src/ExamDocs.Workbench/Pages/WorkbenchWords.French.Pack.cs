namespace ExamDocs.Workbench.Pages;

/// <content>French, for all the kit on record, audit packs, and work that takes its time.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        public override string AllKit => "Matériel";
        public override string AllKitHow =>
            "Ces pages regardent tout le matériel enregistré à la fois, ou tout celui d’un "
            + "employeur. Aucune ne décide d’un équipement.";
        public override string Pack => "Dossier d’audit";
        public override string PackHow =>
            "Ce que le détenteur du matériel doit présenter à un auditeur, à un assureur ou à une autorité, en un "
            + "fichier\u00A0: chaque document en "
            + "vigueur tel qu’il a été émis, ce qui manque, et comment le vérifier. Il ne décide rien et ne change rien.";
        public override string PackAsOf => "État au";
        public override string PackAsOfHow => "La situation à la fin de ce jour, d’après ce qui était alors enregistré.";
        public override string PackPremises => "Seulement en ce lieu";
        public override string PackItems => "Seulement ces équipements\u00A0: identifiants, un par ligne";
        public override string PackAllOfThem => "Laissé vide\u00A0: tous.";
        public override string PackEvidence => "Justificatifs à joindre (PDF, JPEG, PNG)";
        public override string PackEvidenceHow =>
            "Le nom d’un fichier commence par l’identifiant ou le nom d’un vérificateur, ou par l’identifiant ou le "
            + "modèle d’un équipement\u00A0: c’est ainsi que le dossier sait de quoi il traite.";
        public override string PackLanguage => "Langue du dossier";
        public override string PackMake => "Constituer le dossier";
        public override string PacksBefore => "Constitués depuis l’ouverture de l’établi";
        public override string PackStop => "Annuler";
        public override string PackNothingKept => "Rien de ce dossier n’a été gardé.";
        public override string PackGaps => "Ce qui manque";
        public override string PackNoGaps => "Rien de ce qui est recherché ne manque. Cela ne montre pas que le matériel est sûr.";
        public override string PackFiles => "Les fichiers";
        public override string PackSaveZip => "Enregistrer le dossier (ZIP)";
        public override string PackSaveCopy => "Enregistrer la copie de lecture (PDF)";
        public override string PackKept =>
            "Le ZIP est le fichier à remettre. Les deux fichiers restent ici jusqu’à ce " + "que vous les retiriez ou fermiez l’établi.";
        public override string PackRemove => "Retirer les deux fichiers d’ici";
        public override string HowFar => "Où cela en est";
        public override string Waiting => "En attente de la fin d’autres travaux.";
        public override string StoppedAsAsked => "Arrêté à votre demande.";

        public override string PackCounted(int items, int documents, int gaps) =>
            Text($"Équipements\u00A0: {items}\u00A0; documents\u00A0: {documents}\u00A0; manquants\u00A0: {gaps}");

        public override string PackMoreGaps(int more) => Text($"{more} de plus sont dans les fichiers.");

        public override string PackNext(int gaps) =>
            gaps == 0 ? "Terminé. Enregistrez les fichiers." : "Terminé. Regardez ce qui manque, puis enregistrez les fichiers.";
    }
}
