using System.Globalization;

namespace ExamDocs.Templates.AuditPack.Wording;

/// <inheritdoc />
internal sealed class French : PackPhrases
{
    public override string Title => "Dossier d’audit";
    public override string Lead =>
        "Le registre des équipements, ce qui manque, chaque document en vigueur et les justificatifs de compétence.";
    public override string AsOf => "Situation au";
    public override string BuiltOn => "Établi le";
    public override string Employer => "Employeur";
    public override string Premises => "Site";
    public override string Items => "Équipements";
    public override string All => "tous";
    public override string Register => "Registre";
    public override string KeptSince => "Tenu depuis le";
    public override string Holds => "Contenu";

    public override string Counts(int items, int inService, int documents, int evidence) =>
        $"équipements\u00A0: {N(items)}, dont en service\u00A0: {N(inService)}\u00A0; documents\u00A0: {N(documents)}\u00A0; "
        + $"justificatifs\u00A0: {N(evidence)}";

    public override string WhatAsOfMeans(bool isToday) =>
        isToday
            ? "Il dit où en sont les choses le jour où il a été établi."
            : "Il dit où en étaient les choses au jour indiqué\u00A0: d’après les visites enregistrées et les documents émis jusqu’à la "
                + "fin de ce jour. L’intégrité du registre et le contenu des dossiers ont été examinés le jour où il a été établi.";

    public override string OnlyReadingCopy =>
        "Ceci est une copie de lecture. Les documents tels qu’ils ont été émis sont dans le fichier ZIP qui l’accompagne\u00A0: eux seuls "
        + "peuvent être authentifiés et lus par un lecteur d’écran.";

    public override string GapsHeading => "Lacunes";

    public override string GapCount(int gaps) => gaps == 1 ? "1 lacune" : $"{N(gaps)} lacunes";

    public override string NoGaps => "Rien de ce qui est recherché ne manque.";
    public override string GapsLead => "Elles viennent en premier, et chacune dit ce qui manque.";

    public override string Gap(PackGapKind kind) =>
        kind switch
        {
            PackGapKind.RegisterNotSound => "Le registre n’est pas intègre",
            PackGapKind.DecidedOtherwise => "Visites dont la décision serait autre aujourd’hui",
            PackGapKind.DocumentMissingOrDiffers => "Documents que le registre n’a plus tels qu’ils ont été émis",
            PackGapKind.NoDocumentInDate => "Équipements sans document en cours de validité",
            PackGapKind.NoQuarantineRecord => "Équipements retirés dont la mise à l’écart n’est pas enregistrée",
            PackGapKind.RemedyNotRecorded => "Défauts dont la réparation n’est pas enregistrée à la date indiquée",
            PackGapKind.ReplacedInCirculation => "Documents remplacés encore en circulation",
            PackGapKind.DeclarationMissing => "Déclarations de conformité manquantes",
            _ => "Vérificateurs sans justificatif de compétence",
        };

    public override string RegisterHeading => "Registre des équipements";
    public override string Item => "Équipement, n° de série";
    public override string What => "Nature";
    public override string Standing => "Situation";
    public override string NextBy => "Prochaine vérification au plus tard le";
    public override string Documents => "Documents";
    public override string NoDocument => "aucun";

    public override string AndMore(int count) => $"et {N(count)} de plus";

    public override string BackTitle => "Justificatifs, conservation et index";
    public override string ExaminersHeading => "Vérificateurs et justificatifs de leur compétence";
    public override string NoExaminer => "Aucune vérification n’est enregistrée.";
    public override string Examiner => "Vérificateur";
    public override string Qualifications => "Qualifications enregistrées";
    public override string Evidence => "Justificatifs joints";
    public override string NoneEnclosed => "aucun joint";
    public override string EvidenceHeading => "Justificatifs et déclarations joints";
    public override string OtherEvidence => "son nom n’indique ni vérificateur, ni équipement, ni modèle";
    public override string File => "Fichier";
    public override string About => "Concerne";
    public override string PackPage => "Page du dossier";
    public override string OnlyInZip => "dans le ZIP seulement";
    public override string RetentionHeading => "Durée de conservation des rapports";
    public override string RetentionLead =>
        "D’après le droit tel que le programme le connaît. Les recours après accident, les assureurs et les contrats peuvent exiger plus.";
    public override string Visit => "Visite";
    public override string ReportedOn => "Rapport du";
    public override string Keep => "Conserver ses rapports";
    public override string Until => "Au moins jusqu’au";
    public override string NoRule => "aucune règle connue\u00A0: les conserver";
    public override string NotYetKnown => "pas encore connu";
    public override string ByItemHeading => "Index par équipement";
    public override string Continued => " (suite)";

    public override string OnPage(string number, int page) => $"{number}, p. {N(page)}";

    public override string ByDocumentHeading => "Index par document";
    public override string IssuedOn => "Émis le";

    public override string HowToCheckCopy =>
        "Les pages sont numérotées en haut\u00A0: en chiffres romains avant les documents, en chiffres arabes à partir du premier "
        + "document. Seul le fichier contenu dans le ZIP permet d’établir qu’un document est authentique\u00A0: how-to-verify.txt y "
        + "explique comment le contrôler sans notre programme.";

    public override string PageMark(string number) => $"Dossier d'audit, page {number}";

    public override string FilesHeading => "Autres fichiers";
    public override string HowToVerifyFile => "comment tout contrôler sans notre programme";
    public override string WorkbookFile => "le registre, les documents et les lacunes sous forme de tableaux";
    public override string JsonFile => "la même chose pour des programmes";
    public override string CheckpointFile => "l’état du journal du registre";
    public override string ProofsFile => "montre que chaque document figure dans ce journal";

    public override string HowToVerify =>
        """
            COMMENT CONTRÔLER CE DOSSIER SANS LE PROGRAMME QUI L’A ÉTABLI

            1. Le dossier est-il complet et inchangé depuis qu’il a été établi ?
               Décompresser le fichier ZIP. Dans le dossier qui contient bagit.txt, exécuter

                 sha256sum -c manifest-sha256.txt
                 sha256sum -c tagmanifest-sha256.txt

               (macOS : shasum -a 256 -c ...). Chaque ligne doit se terminer par OK. Le dossier est un « bag » selon la RFC 8493 ;
               tout programme pour de tels dossiers le contrôle aussi. Cela montre les accidents, non la fraude : qui modifie un
               fichier peut refaire la liste. Demandez donc à l’expéditeur, à un numéro de téléphone connu par ailleurs, le SHA-256
               de tagmanifest-sha256.txt.

            2. Un document est-il celui qui a été émis ?
               Chaque PDF du dossier documents est, octet pour octet, celui qui a été émis. S’il porte une signature électronique,
               tout lecteur de PDF qui contrôle les signatures la montre. Le SHA-256 de chaque document est dans register.json et dans
               le journal du registre.

            3. Un document a-t-il été inscrit au journal du registre ?
               log/checkpoint.json indique la longueur du journal et sa racine (arbre de la RFC 6962, SHA-256).
               log/inclusion-proofs.json contient, pour chaque document, son inscription au journal et le chemin jusqu’à cette racine.
               Enregistrer les lignes ci-dessous sous le nom check.py dans le dossier qui contient bagit.txt et les exécuter avec
               Python 3. Chaque document doit donner « ok », sans autre ligne : un fichier qui n’est dans aucune
               liste a été ajouté plus tard, et un document sans preuve n’est pas du registre.
               Un état du journal reçu plus tôt de l’expéditeur, ou publié ailleurs,
               montre que le journal n’a pas été réécrit depuis.

            4. Ce que personne ne peut contrôler d’ici : si ce qui a été enregistré est vrai.

            """;

    public override string Description(string employer, string asOf) => $"Dossier d’audit pour {employer}, situation au {asOf}";

    private static string N(int count) => count.ToString(CultureInfo.InvariantCulture);
}
