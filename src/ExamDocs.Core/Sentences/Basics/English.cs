using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences.Basics;

/// <inheritdoc />
internal sealed class English : BasicWords
{
    public override string Day(LocalDate day) => Say.Day(day);

    public override string When(PartialDate date) => Say.When(date);

    public override string Number(decimal number) => Say.Number(number);

    public override string Millimetres(double mm) => StationPlace.Mm(mm);

    public override string Uncertainty(MeanUncertainty uncertainty) => StationPlace.Uncertainty(uncertainty);

    public override string Place(decimal? positionMm) => StationPlace.Of(positionMm);

    public override string Criterion(string? id) => Say.Criterion(id);

    public override string ItemWithoutId => "an item without an id";

    public override string Document(MakersLimits limits) => LimitsSourceText.Of(limits);

    public override string Finding(Finding finding) => finding.Message.Text;

    public override string State(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "clear",
            ObservedState.Noted => "noted",
            ObservedState.Doubt => "doubt",
            ObservedState.Defect => "defect",
            ObservedState.NoSign => "nobody to ask; no sign found",
            ObservedState.NotExamined => "not examined",
            _ => "not applicable",
        };
}
