using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Service;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class German(BasicWords words) : ServiceSentences
{
    public override string Obsolescence(PartialDate on) => $"Ablaufdatum {words.When(on)}, wie am Gegenstand angegeben";

    public override string UseFromFirstUse(int years, PartialDate first, MakersLimits limits) =>
        $"{Years(years)} Gebrauch ab dem ersten Gebrauch {words.When(first)}{words.Beside(limits)}";

    public override string UseFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} Gebrauch ab der Herstellung {words.When(made)}, da der erste Gebrauch nicht erfasst ist{words.Beside(limits)}";

    public override string AgeFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} ab der Herstellung {words.When(made)}{words.Beside(limits)}";

    public override string StorageFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} Lagerung ab der Herstellung {words.When(made)}{words.Beside(limits)}";

    public override string InstructionsUnobtainable =>
        "vom Prüfer selbst gesetztes Ende der Gebrauchsdauer, da die Anleitung des Herstellers nicht zu erlangen ist";

    public override string RetiredByEvent(LocalDate on, string what, MakersLimits limits) =>
        $"der Hersteller mustert nach einem außergewöhnlichen Ereignis aus, und ein solches gab es am {words.Day(on)}, "
        + $"{what}{words.Beside(limits)}";

    public override string StoredTooLong(PartialDate first, int years, PartialDate made, LocalDate last, MakersLimits limits) =>
        $"erster Gebrauch {words.When(first)}, nachdem {Years(years)} Lagerung ab der Herstellung {words.When(made)} am {words.Day(last)} "
        + $"abgelaufen waren{words.Beside(limits)}";

    public override string CleanedTooOften(int times, int allowed, MakersLimits limits) =>
        $"{Say.Count(times)}-mal gereinigt, der Hersteller erlaubt {Say.Count(allowed)}-mal{words.Beside(limits)}";

    public override string AgeCannotBeCounted => "das höchste Alter lässt sich ohne Herstellungsdatum nicht zählen";

    public override string StorageCannotBeCounted => "die längste Lagerung lässt sich ohne Herstellungsdatum nicht zählen";

    public override string UseCannotBeCounted =>
        "die Gebrauchszeit lässt sich ohne Datum des ersten Gebrauchs oder der Herstellung nicht zählen";

    public override string CleaningsCannotBeCounted =>
        "die höchste Zahl der Reinigungen lässt sich nicht prüfen, da die Zahl nicht erfasst ist";

    public override string EndOfService(LocalDate on, bool ofStorage, string limit, IReadOnlyList<(LocalDate On, string Limit)> later)
    {
        var others = later.Select(l => $"{words.Day(l.On)}, {l.Limit}").ToList();
        return $"Ende der Gebrauchsdauer {words.Day(on)}{(ofStorage ? ", wenn nicht vorher in Gebrauch genommen" : "")}: "
            + $"{limit}{(others.Count == 0 ? "" : $"; später wäre {string.Join(", und ", others)}")}";
    }

    public override string UseNotBegun(MakersLimits limits) => $"Nie benutzt: die Gebrauchszeit hat nicht begonnen{words.Beside(limits)}";

    public override string Unlimited(MakersLimits limits) => $"Der Hersteller gibt an, dass es keine Zeitgrenze gibt{words.Beside(limits)}";

    public override string NoLimitRecorded => "Es ist keine Zeitgrenze des Herstellers aufgezeichnet";

    private static string Years(int years) => years == 1 ? "1 Jahr" : $"{Say.Count(years)} Jahre";
}
