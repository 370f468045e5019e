using System.Text.RegularExpressions;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences.Basics;

/// <inheritdoc />
/// <param name="inPrint">True for pages: days and units do not break there. Files and the screen have plain blanks.</param>
internal sealed partial class English(bool inPrint) : BasicWords
{
    public override string Day(LocalDate day) => Bound(Say.Day(day));

    public override string When(PartialDate date) => Bound(Say.When(date));

    public override string Number(decimal number) => Say.Number(number);

    public override string Millimetres(double mm) => Bound(StationPlace.Mm(mm));

    public override string Uncertainty(MeanUncertainty uncertainty) => Bound(StationPlace.Uncertainty(uncertainty));

    public override string Place(decimal? positionMm) => Bound(StationPlace.Of(positionMm));

    public override string Criterion(string? id) => Say.Criterion(id);

    public override string ItemWithoutId => "an item without an id";

    public override string Document(MakersLimits limits) => LimitsSourceText.Of(limits);

    public override string Said(Message message) => message.Text;

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

    /// <summary>A blank after a figure is one that does not break.</summary>
    private string Bound(string text) => inPrint ? AfterFigure().Replace(text, Notation.Unbroken) : text;

    [GeneratedRegex(@"(?<=\d) (?=\p{L})", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex AfterFigure();
}
