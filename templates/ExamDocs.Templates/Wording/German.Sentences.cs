using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Templates.Wording;

public static partial class German
{
    /// <summary>What rules, ledger and measurements say.</summary>
    internal sealed partial class Sentences : SentenceBook
    {
        public override string Day(LocalDate day) => Language.German.Notation.Day(day);

        public override string When(PartialDate date) =>
            date switch
            {
                { Month: null } => Language.German.Notation.Day(date),
                { Day: null } => $"im {Language.German.Notation.Day(date)}",
                _ => $"am {Language.German.Notation.Day(date)}",
            };

        public override string Number(decimal number) => Language.German.Notation.Number(number / 1.000000000000000000000000000000000m);

        public override string Millimetres(double mm) => $"{Language.German.Notation.Number(mm, "0.00#")} mm";

        public override string Uncertainty(MeanUncertainty uncertainty) =>
            $"± {Language.German.Notation.Number(Math.Round(uncertainty.ExpandedMm, 2, MidpointRounding.ToPositiveInfinity), "0.00")} mm";

        public override string Place(decimal? positionMm) =>
            positionMm is { } mm ? $"bei {Number(mm)} mm" : "an einer Messstelle ohne Lage";

        public override string Criterion(string? id) => id is null ? "ein nicht genanntes Kriterium" : Words.Terms.Criterion(id);

        public override string ItemWithoutId => "ein Gegenstand ohne Kennung";

        public override string Document(MakersLimits limits) =>
            limits.Source is not { Title: { } title } source
                ? "Dokument des Herstellers nicht erfasst"
                : Printed.Join(
                    ", ",
                    title,
                    source.Revision is null ? null : $"Ausgabe {source.Revision}",
                    source.Page is null ? null : $"Seite {source.Page}"
                );

        public override string Finding(Finding finding) =>
            Words.Terms.Rule(finding.Code) is { } rule
                ? $"nicht erfüllt: {rule} {Prose.English(finding.Message)}"
                : Prose.English(finding.Message);

        private string Beside(MakersLimits limits) => $" ({Document(limits)})";
    }
}
