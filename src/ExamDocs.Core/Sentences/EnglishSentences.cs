using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences;

/// <summary>English, in which the sentences stand in files.</summary>
internal sealed partial class EnglishSentences : SentenceBook
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

    public override string Finding(Finding finding) => finding.Message;

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private string Beside(MakersLimits limits) => $" ({Document(limits)})";
}
