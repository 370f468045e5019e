using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences;

internal sealed partial class EnglishSentences
{
    public override string Obsolescence(PartialDate on) => $"obsolescence {When(on)}, as marked on the item";

    public override string UseFromFirstUse(int years, PartialDate first, MakersLimits limits) =>
        $"{Years(years)} in use from first use {When(first)}{Beside(limits)}";

    public override string UseFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} in use from manufacture {When(made)}, first use not being recorded{Beside(limits)}";

    public override string AgeFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} from manufacture {When(made)}{Beside(limits)}";

    public override string StorageFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} of storage from manufacture {When(made)}{Beside(limits)}";

    public override string InstructionsUnobtainable => "the examiner's own end of service, the maker's instructions being unobtainable";

    public override string RetiredByEvent(LocalDate on, string what, MakersLimits limits) =>
        $"the maker retires it after an exceptional event, and {Day(on)} brought one, {what}{Beside(limits)}";

    public override string StoredTooLong(PartialDate first, int years, PartialDate made, LocalDate last, MakersLimits limits) =>
        $"first used {When(first)}, after {Years(years)} of storage from manufacture {When(made)} had ended on {Day(last)}{Beside(limits)}";

    public override string CleanedTooOften(int times, int allowed, MakersLimits limits) =>
        Invariant($"cleaned {times} times, and the maker allows {allowed}{Beside(limits)}");

    public override string AgeCannotBeCounted => "the greatest age cannot be counted without the date of manufacture";

    public override string StorageCannotBeCounted => "the longest storage cannot be counted without the date of manufacture";

    public override string UseCannotBeCounted => "the time in use cannot be counted without the date of first use or of manufacture";

    public override string CleaningsCannotBeCounted =>
        "the greatest number of cleanings cannot be held against a count that is not recorded";

    public override string EndOfService(LocalDate on, bool ofStorage, string limit, IReadOnlyList<(LocalDate On, string Limit)> later)
    {
        var others = later.Select(l => $"{Day(l.On)}, {l.Limit}").ToList();
        return $"End of service {Day(on)}{(ofStorage ? " unless taken into use before" : "")}: "
            + $"{limit}{(others.Count == 0 ? "" : $"; later would be {string.Join(", and ", others)}")}";
    }

    public override string UseNotBegun(MakersLimits limits) => $"Never used: the time in use has not begun{Beside(limits)}";

    public override string Unlimited(MakersLimits limits) => $"The maker states that there is no time limit{Beside(limits)}";

    public override string NoLimitRecorded => "No time limit of the maker's is recorded";

    private static string Years(int years) => years == 1 ? "1 year" : Invariant($"{years} years");
}
