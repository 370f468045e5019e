using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Messages;
using NodaTime;

namespace ExamDocs.Core.Sentences.Basics;

/// <inheritdoc />
internal sealed class German : BasicWords
{
    public override string Day(LocalDate day) => Notation.German.Day(day);

    public override string When(PartialDate date) =>
        date switch
        {
            { Month: null } => Notation.German.Day(date),
            { Day: null } => $"im {Notation.German.Day(date)}",
            _ => $"am {Notation.German.Day(date)}",
        };

    public override string Number(decimal number) => Notation.German.Number(number / 1.000000000000000000000000000000000m);

    public override string Millimetres(double mm) => $"{Notation.German.Number(mm, "0.00#")}\u00A0mm";

    public override string Uncertainty(MeanUncertainty uncertainty) =>
        $"± {Notation.German.Number(Math.Round(uncertainty.ExpandedMm, 2, MidpointRounding.ToPositiveInfinity), "0.00")}\u00A0mm";

    public override string Place(decimal? positionMm) =>
        positionMm is { } mm ? $"bei {Number(mm)}\u00A0mm" : "an einer Messstelle ohne Lage";

    public override string Criterion(string? id) => id is null ? "ein nicht genanntes Kriterium" : Terms.German.Criterion(id);

    public override string ItemWithoutId => "ein Gegenstand ohne Kennung";

    public override string Document(MakersLimits limits) =>
        limits.Source is not { Title: { } title } source
            ? "Dokument des Herstellers nicht erfasst"
            : Say.Join(
                ", ",
                title,
                source.Revision is null ? null : $"Ausgabe {source.Revision}",
                source.Page is null ? null : $"Seite\u00A0{source.Page}"
            );

    public override string Said(Message message) => message.In(TranslatedMessages.German);

    public override string State(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "ohne Befund",
            ObservedState.Noted => "vermerkt",
            ObservedState.Doubt => "Zweifel",
            ObservedState.Defect => "Mangel",
            ObservedState.NoSign => "niemand zu befragen; kein Anzeichen gefunden",
            ObservedState.NotExamined => "nicht geprüft",
            _ => "entfällt",
        };
}
