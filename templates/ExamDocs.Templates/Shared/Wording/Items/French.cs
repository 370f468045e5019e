using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Templates.Shared.Wording.Items;

/// <inheritdoc />
internal sealed class French : ItemPhrases
{
    public override string VisitDate => "Vérifié le";
    public override string ColumnItem => "Équipement";
    public override string ColumnDescription => "Description";
    public override string Category => "Catégorie";
    public override string Maker => "Fabricant";
    public override string Model => "Modèle";
    public override string PartNumber => "Référence";
    public override string Serial => "Numéro de série ou de lot";
    public override string OwnersMark => "Marque du propriétaire";
    public override string Manufactured => "Date de fabrication";
    public override string FirstUsed => "Première utilisation";
    public override string NeverUsed => "jamais utilisé";
    public override string Standards => "Normes marquées";
    public override string FittedTo => "Monté sur";
    public override string Parts => "Pièces montées dessus";
    public override string SafeWorkingLoad => "Charge maximale d’utilisation";
    public override string MarkedStrength => "Résistance marquée";
    public override string Purpose => "Usage";
    public override string MakersLimits => "Notice du fabricant utilisée";
    public override string EndOfService => "Fin de service selon les limites enregistrées";
    public override string DefectPart => "Pièce et défaut";
    public override string DefectDanger => "Danger";
    public override string DefectRemedy => "Réparation, renouvellement ou modification nécessaire";
    public override string DangerNow => "est un danger dès maintenant\u00A0: ne pas utiliser avant correction";
    public override string ImminentRisk => "risque existant ou imminent de blessure grave";
    public override string NoNext => "aucune fixée\u00A0: ne pas utiliser";
    public override string NotAfter => "Ne pas utiliser après le";
    public override string NotAfterAnyDay => "ne pas utiliser du tout";
    public override string NoNotAfter => "aucune date plus proche fixée";
    public override string ExaminedOn => "Date de la vérification";

    public override string PhotoCaption(int number, string criterion, ObservedState? state, string? note) =>
        Printed.Join(
            "\u00A0: ",
            Printed.Join(
                ", ",
                $"Photo {Printed.Count(number)}",
                criterion,
                state is { } answer ? SentenceBook.French.Words.State(answer) : null
            ),
            note
        );

    public override string Next(string examination) => $"Prochaine échéance ({examination})";

    public override string DangerLater => "pourrait devenir un danger d’ici au";

    public override string Document(string? title, string? revision, string? page) =>
        $"{Printed.Text(title)}, révision {Printed.Text(revision)}, page\u00A0{Printed.Text(page)}";

    public override string Renewal(string removed, string fitted, string reason, string doneBy, string supervisedBy, string on) =>
        $"{on}\u00A0: {removed} retiré, {fitted} monté. Motif\u00A0: {reason}. Fait par {doneBy}, sous la surveillance de "
        + $"{supervisedBy}.";

    public override string Removal(string removed, string reason, string doneBy, string supervisedBy, string on) =>
        $"{on}\u00A0: {removed} retiré, rien n’est monté à sa place. Motif\u00A0: {reason}. Fait par {doneBy}, sous la "
        + $"surveillance de {supervisedBy}.";
}
