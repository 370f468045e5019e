using ExamDocs.Templates.Label.Wording;
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
    public override string ShortNextBy => "Vérifier d’ici le";
    public override string ShortNotAfter => "Utiliser jusqu’au";
    public override string SignLabel => "Une feuille de calendrier";
    public override string PageOne => "Page 1 sur 1";

    public override string Title(string number) => $"{Kind} {number}";

    public override string IssuedOn(LocalDate day) => $"{CommonPhrases.Languages.French.Issued} {Printed.Day(day)}";

    public override string ShortDay(LocalDate day) => Numbers(day);

    public override string Origin(string visit, LocalDate? examined, string law) =>
        $"Visite {visit}. Vérifié le {Printed.Day(examined)} selon {law}.";

    public override string Caution(string? regime) =>
        $"Comparer le numéro au registre de l’émetteur. {LabelPhrases.Languages.French.Caution(regime)}";
}
