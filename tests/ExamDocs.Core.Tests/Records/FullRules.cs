using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Core.Tests.Records;

/// <summary>A category and a regime in which no member is left out.</summary>
internal static class FullRules
{
    /// <summary>Every member of a category, each with another value than where it is left out.</summary>
    public static Category Category { get; } =
        new()
        {
            Id = "own-kit",
            Name = "Own kit",
            Plural = "Own kits",
            Material = MaterialFamily.Mixed,
            Criteria =
            [
                new()
                {
                    Id = "wear",
                    Question = "Is it whole?",
                    Means = [Means.Feel, Means.Read],
                    Class = CriterionClass.Advisory,
                    Required = false,
                    AllowsNoted = true,
                    AllowsNotApplicable = true,
                    AllowsNoSign = true,
                    NeverReleasable = true,
                    Material = MaterialFamily.Plastic,
                    Source = "invented",
                },
            ],
        };

    /// <summary>The same of a regime.</summary>
    public static Regime Regime { get; } =
        new()
        {
            Id = "own",
            Name = "Own",
            Laws = Since(
                new Law
                {
                    Title = "An invented act",
                    Number = "1",
                    Confidence = Confidence.UnofficialCopy,
                }
            ),
            Intervals = Since(
                new ExaminationInterval
                {
                    Purposes = ["accessory", "not-stated"],
                    Use = "arduous",
                    Bound = Bound.LessThan,
                    Months = 3,
                    What = "for all",
                    Source = "invented, 3",
                    Confidence = Confidence.CommonPractice,
                }
            ),
            Particulars = Since(
                new Particular
                {
                    Paragraph = "8(c)",
                    Words = "the day",
                    Source = "invented, 4",
                    Confidence = Confidence.FromMemory,
                    Checks = ["PAR001"],
                }
            ),
            Duties = Since(
                new Duty
                {
                    What = DutyKind.KeepProofAtPlaceOfUse,
                    Whom = Recipient.AuthorityForThePremises,
                    Hired = true,
                    Source = "invented, 5",
                    Confidence = Confidence.Computed,
                    Checks = ["PAR002"],
                }
            ),
            Retention = Since(
                new RetentionRule
                {
                    Documents = [KeptDocument.PeriodicReport, KeptDocument.ReportBeforeFirstServiceOfAccessory],
                    Words = "for two years",
                    Years = 2,
                    UntilNext = true,
                    Last = 3,
                    NotFound = true,
                    Source = "invented, 6",
                    Confidence = Confidence.Computed,
                }
            ),
            Checks = [new("CON006", "invented, 1")],
            Reasons = [new("D1", "invented, 2")],
            HandsOver =
            [
                new()
                {
                    Purposes = ["other"],
                    Categories = ["helmet"],
                    To = "gb-wah",
                    Source = "invented, 7",
                    Confidence = Confidence.Computed,
                },
            ],
            NotConfirmed = ["The number."],
        };

    private static Period<T>[] Since<T>(T entry) =>
        [
            new()
            {
                From = new LocalDate(2020, 1, 31),
                Until = new LocalDate(2030, 1, 31),
                Entries = [entry],
            },
        ];
}
