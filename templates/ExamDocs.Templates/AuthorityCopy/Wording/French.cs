using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.Templates.Shared.Wording.LawAndSources;

namespace ExamDocs.Templates.AuthorityCopy.Wording;

/// <inheritdoc />
internal sealed class French : AuthorityCopyPhrases
{
    public override string Title => "Copie d’un rapport pour l’autorité compétente";
    public override string To => "À l’autorité compétente";
    public override string ByLaw => "Destinataire légal";
    public override string From => "De l’auteur du rapport";
    public override string Why => "Pourquoi elle est envoyée";
    public override string Which => "Les équipements et le risque";
    public override string ColumnItem => "Équipement";
    public override string ColumnDefect => "Pièce et défaut";
    public override string ColumnState => "État de l’équipement, et ce qu’il faut faire";
    public override string Employer => "Établi pour (employeur)";
    public override string Owner => "Propriétaire (loueur, crédit-bailleur)";
    public override string Premises => "Lieu de la vérification";
    public override string ExaminedOn => "Vérifié le";
    public override string Told => "Employeur informé";
    public override string Enclosed => "Pièces jointes";
    public override string SentBy => "Envoyé par\u00A0:";

    public override string RunningTitle(string original) => $"Copie du rapport {original} pour l’autorité compétente";

    public override string Lead(string original) =>
        $"Page de garde d’une copie du rapport {original}. La copie suit à la page suivante, entière.";

    public override string Imminent(Duty duty) =>
        "De l’avis de l’auteur du rapport, un défaut comporte un risque existant ou imminent de blessure grave. Une "
        + $"copie du rapport va alors dès que possible à l’autorité compétente ({Terms.French.Source(duty.Source)}\u00A0; "
        + $"{LawAndSourcesPhrases.Languages.French.Confidence(duty.Confidence)}).";

    public override string Copy(string original, string number) =>
        $"Une copie du rapport {original} dans les mêmes termes. Ses pages portent le numéro de cette copie, "
        + $"{number}\u00A0; le rapport lui-même porte {original} et la signature. Les deux sont tirés du même "
        + "enregistrement.";

    public override string SignedCopy(string original, string number) =>
        $"Une copie du rapport {original} dans les mêmes termes. Ses pages portent le numéro de cette copie, "
        + $"{number}\u00A0; le rapport lui-même porte {original}. Chacun des deux fichiers est signé électroniquement. Les "
        + "deux sont tirés du même enregistrement.";

    public override string Original(string original) => $"SHA-256 du fichier du rapport {original}\u00A0:";

    public override string Notified(Notification? told) =>
        told is null
            ? CommonPhrases.Languages.French.NotRecorded
            : $"{Printed.Text(told.Whom)}, {Printed.Text(told.How)}, {Printed.Day(told.On)}";
}
