using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Proof.Tests.Comparing;
using ExamDocs.Proof.Tests.SecondEvaluator;
using NodaTime.Text;

namespace ExamDocs.Proof.Tests.Edges;

/// <summary>
/// Every limit on the day before, on the day and on the day after, and diameters to the last digit. The expected column
/// was worked out by hand: the last day of a limit is inside it; the next examination falls six months on, or on the last
/// day of a shorter month (SI 1998/2307 regulation 9(3)(a)(i): at least every six months).
/// </summary>
public sealed class LastDayTests
{
    private const string Day = "2026-05-11";

    public static TheoryData<string, string, string> Table =>
        new()
        {
            { Day, "", "fit - 2026-11-11" },
            // In use for three years from first use.
            { Day, "limit.maxUseYears=3 item.firstUsed=2023-05-10", "withdraw - - U3 W5" },
            { Day, "limit.maxUseYears=3 item.firstUsed=2023-05-11", "fit-until 2026-05-11 2026-11-11 D2" },
            { Day, "limit.maxUseYears=3 item.firstUsed=2023-05-12", "fit-until 2026-05-12 2026-11-11 D2" },
            { Day, "limit.maxUseYears=3 item.firstUsed=2023-11-10", "fit-until 2026-11-10 2026-11-11 D2" },
            { Day, "limit.maxUseYears=3 item.firstUsed=2023-11-11", "fit - 2026-11-11" },
            { Day, "limit.maxUseYears=3 item.firstUsed=2023-05", "withdraw - - U3 W5" },
            { Day, "limit.maxUseYears=3 item.firstUsed=2023-06", "fit-until 2026-06-01 2026-11-11 D2" },
            { Day, "limit.maxUseYears=6 item.firstUsed=none item.manufactured=2020-05-10", "withdraw - - U3 W5" },
            { Day, "limit.maxUseYears=6 item.firstUsed=none item.manufactured=2020-05-11", "fit-until 2026-05-11 2026-11-11 D2" },
            { Day, "limit.maxUseYears=6 item.firstUsed=none item.manufactured=none limit.maxAgeYears=none", "undetermined - - U4" },
            // Five years of age.
            { Day, "limit.maxAgeYears=5 item.manufactured=2021-05-10 item.firstUsed=2022-01-01", "withdraw - - U3 W5" },
            { Day, "limit.maxAgeYears=5 item.manufactured=2021-05-11 item.firstUsed=2022-01-01", "fit-until 2026-05-11 2026-11-11 D2" },
            { Day, "limit.maxAgeYears=5 item.manufactured=2021-05-12 item.firstUsed=2022-01-01", "fit-until 2026-05-12 2026-11-11 D2" },
            { Day, "limit.maxAgeYears=5 item.manufactured=2021-11-12 item.firstUsed=2022-01-01", "fit - 2026-11-11" },
            { Day, "limit.maxAgeYears=5 item.manufactured=2021 item.firstUsed=2022-01-01", "withdraw - - U3 W5" },
            { Day, "limit.maxAgeYears=5 item.manufactured=none", "undetermined - - U4" },
            {
                "2026-02-28",
                "limit.maxAgeYears=2 item.manufactured=2024-02-29 item.firstUsed=2024-04-01",
                "fit-until 2026-02-28 2026-08-28 D2"
            },
            { "2026-03-01", "limit.maxAgeYears=2 item.manufactured=2024-02-29 item.firstUsed=2024-04-01", "withdraw - - U3 W5" },
            // Two years of storage, never used, and before first use.
            { Day, "limit.maxStorageYears=2 item.firstUsed=none item.neverUsed=true item.manufactured=2024-05-10", "withdraw - - U3 W5" },
            {
                Day,
                "limit.maxStorageYears=2 item.firstUsed=none item.neverUsed=true item.manufactured=2024-05-11",
                "fit-until 2026-05-11 2026-11-11 D2"
            },
            {
                Day,
                "limit.maxStorageYears=2 item.firstUsed=none item.neverUsed=true item.manufactured=2024-05-12",
                "fit-until 2026-05-12 2026-11-11 D2"
            },
            { Day, "limit.maxStorageYears=2 item.manufactured=2023-02-03 item.firstUsed=2025-02-02", "fit - 2026-11-11" },
            { Day, "limit.maxStorageYears=2 item.manufactured=2023-02-03 item.firstUsed=2025-02-03", "fit - 2026-11-11" },
            { Day, "limit.maxStorageYears=2 item.manufactured=2023-02-03 item.firstUsed=2025-02-04", "withdraw - - U3 W5" },
            // Printed on the item.
            { Day, "item.obsoleteOn=2026-05-10", "withdraw - - U3 W5" },
            { Day, "item.obsoleteOn=2026-05-11", "fit-until 2026-05-11 2026-11-11 D2" },
            { Day, "item.obsoleteOn=2026-05-12", "fit-until 2026-05-12 2026-11-11 D2" },
            { Day, "item.obsoleteOn=2026-11-10", "fit-until 2026-11-10 2026-11-11 D2" },
            { Day, "item.obsoleteOn=2026-11-11", "fit - 2026-11-11" },
            { Day, "item.obsoleteOn=2026-05", "withdraw - - U3 W5" },
            { Day, "item.obsoleteOn=2026-06", "fit-until 2026-06-01 2026-11-11 D2" },
            // The examiner's own end of service.
            { Day, "unobtainable=2026-05-10", "withdraw - - U3 W5" },
            { Day, "unobtainable=2026-05-11", "fit-until 2026-05-11 2026-11-11 D2" },
            { Day, "unobtainable=2026-05-12", "fit-until 2026-05-12 2026-11-11 D2" },
            // A defect that could become a danger.
            { Day, "later=2026-05-10", "withdraw - - U3 W3 W4" },
            { Day, "later=2026-05-11", "withdraw - - U3 W3 W4" },
            { Day, "later=2026-05-12", "fit-until 2026-05-11 2026-11-11 D1" },
            { Day, "later=2026-05-13", "fit-until 2026-05-12 2026-11-11 D1" },
            { Day, "later=2026-11-12", "fit-until 2026-11-11 2026-11-11 D1" },
            // Cleanings and events.
            { Day, "limit.maxCleanings=10 item.cleanings=9", "fit - 2026-11-11" },
            { Day, "limit.maxCleanings=10 item.cleanings=10", "fit - 2026-11-11" },
            { Day, "limit.maxCleanings=10 item.cleanings=11", "withdraw - - U3 W5" },
            { Day, "limit.maxCleanings=10", "undetermined - - U4" },
            { Day, "event=2026-05-10", "withdraw - - U3 W5" },
            { Day, "event=2026-05-11", "withdraw - - U3 W5" },
            // An earlier withdrawal, and the day of its release.
            { Day, "withdrawn=2026-01-15", "withdraw - - U3 W10" },
            { Day, "withdrawn=2026-01-15 released=2026-01-14", "withdraw - - U3 W10" },
            { Day, "withdrawn=2026-01-15 released=2026-01-15", "fit - 2026-11-11" },
            { Day, "withdrawn=2026-01-15 released=2026-01-16", "fit - 2026-11-11" },
            // Intervals.
            { "2026-08-31", "", "fit - 2027-02-28" },
            { "2027-08-30", "", "fit - 2028-02-29" },
            { "2024-02-29", "", "fit - 2024-08-29" },
            { Day, "item.purpose=accessory", "fit - 2026-11-11" },
            { Day, "item.purpose=other exam.basis=twelve-month", "fit - 2027-05-11" },
            { Day, "item.purpose=other", "fit - 2026-11-11" },
            { Day, "limit.intervalMonths=3", "fit - 2026-08-11" },
            { Day, "limit.intervalMonths=7", "fit - 2026-11-11" },
            { Day, "scheme=3", "fit - 2026-08-11" },
            { Day, "scheme=9", "fit - 2026-11-11" },
            { Day, "exam.nextBy=2026-05-12", "fit - 2026-05-12" },
            { Day, "exam.nextBy=2026-11-10", "fit - 2026-11-10" },
            { Day, "exam.nextBy=2026-11-12", "fit - 2026-11-11" },
            { Day, "item.purpose=fall-arrest-only exam.regime=gb-wah", "fit - 2026-11-11" },
            { Day, "item.purpose=fall-arrest-only exam.regime=gb-wah use=arduous", "fit - 2026-08-11" },
            // Nominal 11.0 mm, 10 per cent to either side: 9.90 to 12.10 mm, both inside.
            { Day, "readings=9.89", "withdraw - - U3 W7" },
            { Day, "readings=9.90", "fit - 2026-11-11" },
            { Day, "readings=9.91", "fit - 2026-11-11" },
            { Day, "readings=12.09", "fit - 2026-11-11" },
            { Day, "readings=12.10", "fit - 2026-11-11" },
            { Day, "readings=12.11", "withdraw - - U3 W7" },
            { Day, "readings=9.85,9.95", "fit - 2026-11-11" },
            { Day, "readings=9.85,9.94", "withdraw - - U3 W7" },
            { Day, "readings=9.9,9.9,9.9", "fit - 2026-11-11" },
            { Day, "readings=9.9,9.9,9.89", "withdraw - - U3 W7" },
        };

    [Theory]
    [MemberData(nameof(Table))]
    public void Each_limit_around_its_last_day(string day, string changes, string expected)
    {
        var draft = EdgeRecord.With(day, changes);
        var item = Compared.Programme(draft.Json(), [], draft.AsOf).Items.Single();
        Assert.Equal(expected, $"{item.Outcome.Word()} {Text(item.Until)} {Text(item.NextExaminationBy)} {Codes(item)}".TrimEnd());
        var second = Evaluator.Answers(draft.Json(), []).Single();
        Assert.Equal(
            expected,
            (
                $"{second.Outcome} {second.Until?.ToString("yyyy-MM-dd") ?? "-"} {second.Next?.ToString("yyyy-MM-dd") ?? "-"} "
                + $"{second.CodesText}"
            ).TrimEnd()
        );
    }

    private static string Codes(DeterminedItem item) =>
        string.Join(' ', item.Reasons.Select(r => r.Code).Distinct().Order(StringComparer.Ordinal));

    private static string Text(NodaTime.LocalDate? day) => day is { } d ? LocalDatePattern.Iso.Format(d) : "-";
}
