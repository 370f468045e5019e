using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Templates.Wording;

public static partial class French
{
    /// <summary>What rules, ledger and measurements say.</summary>
    internal sealed partial class Sentences : SentenceBook
    {
        public override string Day(LocalDate day) => Language.French.Notation.Day(day);

        public override string When(PartialDate date) =>
            date switch
            {
                { Day: null } => $"en {Language.French.Notation.Day(date)}",
                _ => $"le {Language.French.Notation.Day(date)}",
            };

        public override string Number(decimal number) => Language.French.Notation.Number(number / 1.000000000000000000000000000000000m);

        public override string Millimetres(double mm) => $"{Language.French.Notation.Number(mm, "0.00#")} mm";

        public override string Uncertainty(MeanUncertainty uncertainty) =>
            $"± {Language.French.Notation.Number(Math.Round(uncertainty.ExpandedMm, 2, MidpointRounding.ToPositiveInfinity), "0.00")} mm";

        public override string Place(decimal? positionMm) =>
            positionMm is { } mm ? $"à {Number(mm)} mm" : "à un point de mesure sans position";

        public override string Criterion(string? id) => id is null ? "un critère non nommé" : Words.Terms.Criterion(id);

        public override string ItemWithoutId => "un équipement sans identifiant";

        public override string Document(MakersLimits limits) =>
            limits.Source is not { Title: { } title } source
                ? "document du fabricant non enregistré"
                : Printed.Join(
                    ", ",
                    title,
                    source.Revision is null ? null : $"révision {source.Revision}",
                    source.Page is null ? null : $"page {source.Page}"
                );

        public override string Finding(Finding finding) =>
            Words.Terms.Rule(finding.Code) is { } rule
                ? $"non respecté\u00A0: {rule} {Prose.English(finding.Message)}"
                : Prose.English(finding.Message);

        private string Beside(MakersLimits limits) => $" ({Document(limits)})";
    }
}
