using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.DueLabel.Wording;

/// <inheritdoc />
internal sealed class French : DueLabelPhrases
{
    public override string Kind => "Étiquette de prochaine vérification";
    public override string NextBy => "À vérifier au plus tard le";
    public override string NotAfter => "Ne pas utiliser après le";
    public override string SignLabel => "Une feuille de calendrier";
    public override string PageOne => "Page 1 sur 1";

    public override string Title(string number) => $"{Kind} {number}";

    public override string IssuedOn(LocalDate day) => $"{CommonPhrases.Languages.French.Issued} {Printed.Day(day)}";

    public override string Origin(string visit, LocalDate? examined, string law) =>
        $"Visite {visit}. Vérifié le {Printed.Day(examined)} selon {law}.";

    public override string Caution(string number) =>
        $"Comparer {number} au registre de l’émetteur. La notice du fabricant, la loi locale et le jugement de la "
        + "personne compétente priment.";
}
