using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Messages;
using NodaTime;

namespace ExamDocs.Core.Sentences.Basics;

/// <inheritdoc />
internal sealed class French : BasicWords
{
    public override string Day(LocalDate day) => Notation.French.Day(day);

    public override string When(PartialDate date) =>
        date switch
        {
            { Day: null } => $"en {Notation.French.Day(date)}",
            _ => $"le {Notation.French.Day(date)}",
        };

    public override string Number(decimal number) => Notation.French.Number(number / 1.000000000000000000000000000000000m);

    public override string Millimetres(double mm) => $"{Notation.French.Number(mm, "0.00#")}\u00A0mm";

    public override string Uncertainty(MeanUncertainty uncertainty) =>
        $"± {Notation.French.Number(Math.Round(uncertainty.ExpandedMm, 2, MidpointRounding.ToPositiveInfinity), "0.00")}\u00A0mm";

    public override string Place(decimal? positionMm) =>
        positionMm is { } mm ? $"à {Number(mm)}\u00A0mm" : "à un point de mesure sans position";

    public override string Criterion(string? id) => id is null ? "un critère non nommé" : Terms.French.Criterion(id);

    public override string ItemWithoutId => "un équipement sans identifiant";

    public override string Document(MakersLimits limits) =>
        limits.Source is not { Title: { } title } source
            ? "document du fabricant non renseigné"
            : Say.Join(
                ", ",
                title,
                source.Revision is null ? null : $"révision {source.Revision}",
                source.Page is null ? null : $"page\u00A0{source.Page}"
            );

    public override string Said(Message message) => message.In(TranslatedMessages.French);

    public override string State(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "rien à signaler",
            ObservedState.Noted => "noté",
            ObservedState.Doubt => "doute",
            ObservedState.Defect => "défaut",
            ObservedState.NoSign => "personne à interroger\u00A0; aucun signe trouvé",
            ObservedState.NotExamined => "non examiné",
            _ => "sans objet",
        };
}
