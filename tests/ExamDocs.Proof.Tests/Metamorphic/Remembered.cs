using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Proof.Tests.Generating;
using NodaTime;

namespace ExamDocs.Proof.Tests.Metamorphic;

/// <summary>Things a store might remember of the items of a record, and of others.</summary>
internal static class Remembered
{
    private static readonly string[][] Codes =
    [
        ["W1"],
        ["W8"],
        ["W9"],
        ["W8", "W9"],
        [],
    ];

    public static History Drawn(ExaminationRecord record, Dice dice) =>
        new([.. Enumerable.Range(0, dice.Below(4)).Select(_ => Withdrawal(record, dice))])
        {
            Examinations = [.. Enumerable.Range(0, dice.Below(8)).Select(_ => Examination(record, dice)).OfType<PastExamination>()],
        };

    public static History Joined(History one, History other) =>
        new([.. one.Withdrawals, .. other.Withdrawals]) { Examinations = [.. one.Examinations, .. other.Examinations] };

    public static History Shuffled(History history, Dice dice) =>
        new([.. history.Withdrawals.OrderBy(_ => dice.Next())]) { Examinations = [.. history.Examinations.OrderBy(_ => dice.Next())] };

    /// <summary>The record's own earlier examinations as a store would have them.</summary>
    public static History Own(ExaminationRecord record) =>
        History.None with
        {
            Examinations =
            [
                .. record
                    .Examinations.Where(e => e.Item is not null && e.DayAt(record.Visit) is not null)
                    .Select(e => new PastExamination(e.Item!, e.DayAt(record.Visit)!.Value, "R-2020-000001", e)),
            ],
        };

    private static PastWithdrawal Withdrawal(ExaminationRecord record, Dice dice)
    {
        var marked = dice.Of(record.Items);
        var id = dice.Chance(50) ? marked.Id ?? "OLD" : dice.One("OLD-1", "OLD-2");
        return new(id, dice.One("Q-2021-000001", "Q-2021-000002", null), Day(record, dice), dice.Of(Codes), dice.Chance(20))
        {
            IsOfThisVisit = dice.Chance(20),
        };
    }

    private static PastExamination? Examination(ExaminationRecord record, Dice dice)
    {
        if (record.Examinations.Count == 0)
        {
            return null;
        }

        var of = dice.Of(record.Examinations);
        var on = Day(record, dice);
        return new(
            dice.Chance(80) ? of.Item ?? "OLD" : dice.Of(record.Items).Id ?? "OLD",
            on,
            dice.One("R-2021-000001", null),
            of with
            {
                ExaminedOn = on,
                Conclusion = dice.One<Conclusion?>(Conclusion.Fit, Conclusion.Withdraw, null),
                Diameters = dice.Chance(50) ? of.Diameters : [new() { PositionMm = 50, ReadingsMm = [dice.Between(60, 130) / 10m] }],
                Defects = dice.Chance(50)
                    ? of.Defects
                    :
                    [
                        new()
                        {
                            Criterion = "marking",
                            Danger = Danger.Later,
                            BecomesDangerOn = on.PlusDays(90),
                        },
                    ],
            }
        )
        {
            Remedies = dice.Chance(30)
                ?
                [
                    new Remedy
                    {
                        Item = of.Item,
                        What = "mended",
                        DoneOn = on.PlusDays(dice.Below(40)),
                    },
                ]
                : [],
            Renewals = dice.Chance(30)
                ?
                [
                    new Renewal
                    {
                        Item = of.Item,
                        RemovedPart = "OLD-1",
                        DoneOn = on.PlusDays(dice.Below(40)),
                    },
                ]
                : [],
        };
    }

    /// <summary>Mostly before the visit, at times on its day or after it.</summary>
    private static LocalDate Day(ExaminationRecord record, Dice dice) =>
        record.Visit.ExaminedOn is { } on && dice.Chance(30)
            ? on.PlusDays(dice.Between(-1, 2))
            : new LocalDate(2021, 1, 1).PlusDays(dice.Below(1500));
}
