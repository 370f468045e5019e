using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Service;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class English(BasicWords words) : ServiceSentences
{
    public override string Obsolescence(PartialDate on) => $"obsolescence {words.When(on)}, as marked on the item";

    public override string UseFromFirstUse(int years, PartialDate first, MakersLimits limits) =>
        $"{Years(years)} in use from first use {words.When(first)}{words.Beside(limits)}";

    public override string UseFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} in use from manufacture {words.When(made)}, first use not being recorded{words.Beside(limits)}";

    public override string AgeFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} from manufacture {words.When(made)}{words.Beside(limits)}";

    public override string StorageFromManufacture(int years, PartialDate made, MakersLimits limits) =>
        $"{Years(years)} of storage from manufacture {words.When(made)}{words.Beside(limits)}";

    public override string InstructionsUnobtainable => "the examiner's own end of service, the maker's instructions being unobtainable";

    public override string RetiredByEvent(LocalDate on, string what, MakersLimits limits) =>
        $"the maker retires it after an exceptional event, and {words.Day(on)} brought one, {what}{words.Beside(limits)}";

    public override string StoredTooLong(PartialDate first, int years, PartialDate made, LocalDate last, MakersLimits limits) =>
        $"first used {words.When(first)}, after {Years(years)} of storage from manufacture "
        + $"{words.When(made)} had ended on {words.Day(last)}{words.Beside(limits)}";

    public override string CleanedTooOften(int times, int allowed, MakersLimits limits) =>
        string.Create(CultureInfo.InvariantCulture, $"cleaned {times} times, and the maker allows {allowed}{words.Beside(limits)}");

    public override string AgeCannotBeCounted => "the greatest age cannot be counted without the date of manufacture";

    public override string StorageCannotBeCounted => "the longest storage cannot be counted without the date of manufacture";

    public override string UseCannotBeCounted => "the time in use cannot be counted without the date of first use or of manufacture";

    public override string CleaningsCannotBeCounted =>
        "the greatest number of cleanings cannot be held against a count that is not recorded";

    public override string EndOfService(LocalDate on, bool ofStorage, string limit, IReadOnlyList<(LocalDate On, string Limit)> later)
    {
        var others = later.Select(l => $"{words.Day(l.On)}, {l.Limit}").ToList();
        return $"End of service {words.Day(on)}{(ofStorage ? " unless taken into use before" : "")}: "
            + $"{limit}{(others.Count == 0 ? "" : $"; later would be {string.Join(", and ", others)}")}";
    }

    public override string UseNotBegun(MakersLimits limits) => $"Never used: the time in use has not begun{words.Beside(limits)}";

    public override string Unlimited(MakersLimits limits) => $"The maker states that there is no time limit{words.Beside(limits)}";

    public override string NoLimitRecorded => "No time limit of the maker's is recorded";

    private static string Years(int years) => years == 1 ? "1 year" : string.Create(CultureInfo.InvariantCulture, $"{years} years");
}
