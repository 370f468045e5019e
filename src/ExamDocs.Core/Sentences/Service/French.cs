using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Service;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class French(BasicWords words) : ServiceSentences
{
    public override string Obsolescence(PartialDate on) => $"péremption {words.When(on)}, comme marqué sur l’équipement";

    public override string UseFromFirstUse(int years, PartialDate first, MakersLimits limits) =>
        $"{Years(years)} d’utilisation depuis la première, {words.When(first)}{words.Beside(limits)}";

    public override string UseFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} d’utilisation depuis la fabrication {words.When(made)}, la première utilisation n’étant pas "
        + $"renseignée{words.Beside(limits)}";

    public override string AgeFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} depuis la fabrication {words.When(made)}{words.Beside(limits)}";

    public override string StorageFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} de stockage depuis la fabrication {words.When(made)}{words.Beside(limits)}";

    public override string InstructionsUnobtainable =>
        "fin de service fixée par le vérificateur lui-même, la notice du fabricant étant introuvable";

    public override string RetiredByEvent(LocalDate on, string what, MakersLimits limits) =>
        $"le fabricant le réforme après un événement exceptionnel, et il y en a eu un le {words.Day(on)}, {what}{words.Beside(limits)}";

    public override string StoredTooLong(PartialDate first, int years, PartialDate made, LocalDate last, MakersLimits limits) =>
        $"première utilisation {words.When(first)}, après la fin, le {words.Day(last)}, de {Years(years)} de stockage depuis la "
        + $"fabrication {words.When(made)}{words.Beside(limits)}";

    public override string CleanedTooOften(int times, int allowed, MakersLimits limits) =>
        $"nettoyé {Say.Count(times)} fois, le fabricant en admet {Say.Count(allowed)}{words.Beside(limits)}";

    public override string AgeCannotBeCounted => "l’âge maximal ne peut être compté sans la date de fabrication";

    public override string StorageCannotBeCounted => "le stockage maximal ne peut être compté sans la date de fabrication";

    public override string UseCannotBeCounted =>
        "la durée d’utilisation ne peut être comptée sans la date de première utilisation ou de fabrication";

    public override string CleaningsCannotBeCounted => "le nombre maximal de nettoyages ne peut être comparé à un nombre non renseigné";

    public override string EndOfService(LocalDate on, bool ofStorage, string limit, IReadOnlyList<(LocalDate On, string Limit)> later)
    {
        var others = later.Select(l => $"le {words.Day(l.On)}, {l.Limit}").ToList();
        return $"Fin de service le {words.Day(on)}{(ofStorage ? " sauf mise en service avant" : "")}\u00A0: "
            + $"{limit}{(others.Count == 0 ? "" : $"\u00A0; plus tard viendrait {string.Join(", et ", others)}")}";
    }

    public override string UseNotBegun(MakersLimits limits) =>
        $"Jamais utilisé\u00A0: la durée d’utilisation n’a pas commencé{words.Beside(limits)}";

    public override string Unlimited(MakersLimits limits) =>
        $"Le fabricant déclare qu’il n’y a pas de limite de temps{words.Beside(limits)}";

    public override string NoLimitRecorded => "Aucune limite de temps du fabricant n’est enregistrée";

    private static string Years(int years) => years == 1 ? "1 an" : $"{Say.Count(years)} ans";
}
