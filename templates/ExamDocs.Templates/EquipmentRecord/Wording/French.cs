using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.EquipmentRecord.Wording;

/// <inheritdoc />
internal sealed class French : EquipmentRecordPhrases
{
    public override string Title => "Fiche de vie";

    public override string Lead =>
        "Pour le détenteur de l’équipement\u00A0: identification, limites du fabricant, et tout ce qui est "
        + "enregistré de ce qui a été trouvé et fait. Ce n’est pas un rapport de vérification.";

    public override string Reasons => "Motif";
    public override string Identity => "Identification";
    public override string Purchased => "Acheté";
    public override string ObsoleteOn => "Date de péremption marquée";
    public override string Cleanings => "Nettoyages à ce jour";
    public override string Declaration => "Déclaration de conformité du fabricant";
    public override string TransferEvidence => "Preuve de la dernière vérification, à la remise";
    public override string Status => "Situation";
    public override string Keeper => "Détenu par (employeur)";
    public override string Owner => "Propriétaire (loueur, crédit-bailleur)";
    public override string LastExamined => "Vérification précédente";
    public override string Limits => "Limites du fabricant";
    public override string LimitsDocument => "Document";
    public override string NoLimits => "Aucune limite du fabricant n’est enregistrée pour cet équipement.";
    public override string MaxUse => "En service au plus";
    public override string MaxStorage => "En stock avant la première utilisation au plus";
    public override string MaxAge => "Depuis la fabrication au plus";
    public override string MaxCleanings => "Nettoyé au plus";
    public override string EventEnds => "Après un événement exceptionnel";
    public override string EventEndsService => "son service prend fin";
    public override string Interval => "Vérification selon le fabricant";
    public override string NoTimeLimit => "Limite de temps";
    public override string MakerSaysNone => "le fabricant déclare qu’il n’y en a pas";
    public override string Unobtainable => "Notice introuvable";
    public override string NominalDiameter => "Diamètre nominal";
    public override string PermittedParts => "Pièces admises";
    public override string MinTail => "Brin libre après un nœud au moins";
    public override string Retying => "Peut être refait par";
    public override string Parts => "Pièces et assemblage";

    public override string NoParts => "Aucune pièce n’est enregistrée comme montée dessus, et il n’est enregistré comme monté sur rien.";

    public override string PartNow => "montée dessus à présent";
    public override string PartBefore => "était montée dessus, et a été retirée";
    public override string WholeNow => "il est monté dessus à présent";
    public override string WholeBefore => "il était monté dessus, et a été retiré";
    public override string ColumnHow => "Comment";
    public override string ColumnThing => "Équipement";
    public override string ColumnDescription => "Description";
    public override string ColumnState => "Son propre résultat";
    public override string Examinations => "Vérifications";
    public override string NoExaminations => "Aucune vérification de cet équipement n’est enregistrée.";
    public override string ColumnDate => "Date";
    public override string ColumnWhy => "Motif et vérificateur";
    public override string ColumnResult => "Résultat";
    public override string ColumnFound => "Ce qui a été trouvé";
    public override string NothingFound => "aucun défaut enregistré";
    public override string Renewals => "Pièces renouvelées";
    public override string Remedies => "Réparations et modifications";
    public override string Releases => "Remises en service après un retrait";
    public override string Disposals => "Devenir après un retrait (réparation, mise au rebut)";
    public override string NotInRecord => "aucun enregistré";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Cette fiche contient ce que contient l’enregistrement de la visite. Les vérifications et réparations jamais "
            + "inscrites n’y sont pas.",
        "Le résultat est celui de la dernière vérification, selon les règles en vigueur. Des vérifications antérieures, "
            + "la conclusion est donnée telle qu’elle fut alors enregistrée.",
        "«\u00A0Non renseigné\u00A0» veut dire que l’enregistrement ne contient pas cette valeur, et non qu’il n’y en a pas.",
    ];

    public override string RecordHasErrors(IReadOnlyList<string> codes) =>
        $"L’enregistrement de cet équipement a des erreurs ({string.Join(", ", codes)}). Ne pas se fier à ce qui est "
        + "imprimé ici avant leur correction.";

    public override string Years(int years) => years == 1 ? "1 an" : $"{Printed.Count(years)} ans";

    public override string Months(int months) => months == 1 ? "chaque mois" : $"tous les {Printed.Count(months)} mois";

    public override string Times(int times) => times == 1 ? "une fois" : $"{Printed.Count(times)} fois";

    public override string Millimetres(decimal millimetres) => $"{Printed.Number(millimetres)}\u00A0mm";

    public override string Diameter(decimal nominal, decimal? percent) =>
        percent is { } p
            ? $"{Printed.Number(nominal)}\u00A0mm, à {Printed.Number(p)}\u00A0% de part et d’autre"
            : $"{Printed.Number(nominal)}\u00A0mm\u00A0; tolérance {CommonPhrases.Languages.French.NotRecorded}e";

    public override string Sought(string? sought, LocalDate? until) =>
        $"cherchée\u00A0: {Printed.Text(sought)}\u00A0; par décision propre du vérificateur, ne pas utiliser après le "
        + $"{Printed.Day(until)}";

    public override string MayRetie(Retying who) =>
        who switch
        {
            Core.Records.Retying.Maker => "le fabricant seul",
            Core.Records.Retying.CompetentPerson => "une personne compétente",
            _ => "l’utilisateur",
        };

    public override string DeclarationLine(string? reference, LocalDate? on) => $"{Printed.Text(reference)}, {Printed.Day(on)}";

    public override string Conclusion(Conclusion? conclusion) =>
        conclusion switch
        {
            Core.Records.Conclusion.Fit => "conclusion d’alors\u00A0: apte à l’emploi",
            Core.Records.Conclusion.Withdraw => "conclusion d’alors\u00A0: à retirer du service",
            _ => "conclusion non renseignée",
        };

    public override string NextBy(LocalDate day) => $"prochaine échéance le {Printed.Day(day)}";

    public override string Defect(string part, string description, string danger, string remedy) =>
        $"{part} – {description} ({danger}). Nécessaire\u00A0: {remedy}.";

    public override string DangerNow => "danger dès maintenant";

    public override string DangerLater(LocalDate? on) => $"pourrait devenir un danger d’ici au {Printed.Day(on)}";

    public override string Diameters(int places, string smallest, string largest) =>
        places == 1
            ? $"Diamètre à 1 endroit\u00A0: moyenne {smallest}\u00A0mm."
            : $"Diamètres à {Printed.Count(places)} endroits\u00A0: moyennes de {smallest} à {largest}\u00A0mm.";

    public override string UnreadableDiameters => "Des diamètres ont été mesurés\u00A0; aucune mesure n’est lisible.";

    public override string Test(string? what, string? result) => $"Essai\u00A0: {Printed.Text(what)}\u00A0: {Printed.Text(result)}.";

    public override string Event(string? what, LocalDate? on) =>
        $"Après un événement exceptionnel\u00A0: {Printed.Text(what)}, le {Printed.Day(on)}.";

    public override string Remedy(LocalDate? on, string? what, string? by, string? evidence) =>
        $"{Printed.Day(on)}\u00A0: {Printed.Text(what)}. Fait par {Printed.Text(by)}. Preuve\u00A0: {Printed.Text(evidence)}.";

    public override string Release(LocalDate? on, string by, string? document, LocalDate? withdrawnOn, bool inError, string? grounds)
    {
        var withdrawn =
            document is not null ? $"par {document}"
            : withdrawnOn is { } day ? $"le {Printed.Day(day)}"
            : "par une vérification de cet enregistrement";
        return $"{Printed.Day(on)}\u00A0: remis en service par {by}{(inError ? ", car enregistré par erreur" : "")}. Retiré "
            + $"{withdrawn}. Motifs\u00A0: {Printed.Text(grounds)}.";
    }

    public override string Disposal(LocalDate? on, string what, string by) => $"{Printed.Day(on)}\u00A0: {what}, par {by}.";
}
