using ExamDocs.Core.Records;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Adverse;

/// <summary>Changes each of which alone withdraws an item, whatever else is recorded of it.</summary>
internal static class ReasonsToWithdraw
{
    public static readonly IReadOnlyList<(string Name, Action<Subject, Dice> Apply)> All =
    [
        ("a decisive defect", (s, d) => s.Answer(Any(s, d, c => c.Class == "decisive"), ObservedState.Defect)),
        ("a doubt", (s, d) => s.Answer(Any(s, d, _ => true), ObservedState.Doubt)),
        ("a weighed defect without an entry", (s, d) => s.Answer(AnyNotEntered(s, d), ObservedState.Defect)),
        ("a weighed defect dated today or before", (s, d) => Weighed(s, d, Danger.Later, -d.Between(0, 30))),
        ("a defect that is a danger now", (s, d) => Weighed(s, d, Danger.Now, 50)),
        ("a later defect without its date", (s, d) => s.Enter("marking", Danger.Later, null, false, "renew")),
        ("an imminent risk", (s, d) => s.Enter("marking", Danger.Later, s.On.PlusDays(90), true, "renew")),
        ("the examiner withdraws it", (s, _) => s.Examination = s.Examination with { Conclusion = Conclusion.Withdraw }),
        ("obsolete", (s, d) => s.Item = s.Item with { ObsoleteOn = s.DaysAgo(Subject.Past(d)) }),
        ("too old", TooOld),
        ("used too long", UsedTooLong),
        ("stored too long", StoredTooLong),
        ("cleaned too often", (s, d) =>
        {
            s.Limits = s.Limits with { MaxCleanings = 10 };
            s.Item = s.Item with { Cleanings = d.Between(11, 40) };
        }),
        ("retired by an event", (s, d) =>
        {
            s.Limits = s.Limits with { EventEndsService = true };
            s.Examination = s.Examination with
            {
                Event = new ExceptionalEvent { What = "a fall", On = s.On.PlusDays(-d.Between(0, 90)) },
            };
        }),
        ("too thin or too thick", Diameter),
        ("not permitted where it is fitted", NotPermitted),
        ("an earlier withdrawal still open", (s, _) => s.HasOpenHold = true),
    ];

    private static string Any(Subject subject, Dice dice, Func<Criterion, bool> such) =>
        dice.Of([.. Kinds.All[subject.Item.Category!].Criteria.Values.Where(such)]).Id;

    private static string AnyNotEntered(Subject subject, Dice dice)
    {
        subject.Examination = subject.Examination with { Defects = [] };
        return Any(subject, dice, c => c.Class != "decisive");
    }

    private static void Weighed(Subject subject, Dice dice, Danger danger, int days)
    {
        var criterion = Any(subject, dice, c => c.Class != "decisive");
        subject.Answer(criterion, ObservedState.Defect);
        subject.Enter(criterion, danger, subject.On.PlusDays(days), false, "renew");
    }

    private static void TooOld(Subject subject, Dice dice)
    {
        var years = dice.Between(1, 9);
        subject.Limits = subject.Limits with { MaxAgeYears = years, NoLimit = false };
        var made = subject.On.PlusYears(-years).PlusDays(-Subject.Past(dice));
        subject.Item = subject.Item with { Manufactured = PartialDate.Of(made), Purchased = null };
    }

    private static void UsedTooLong(Subject subject, Dice dice)
    {
        var years = dice.Between(1, 9);
        subject.Limits = subject.Limits with { MaxUseYears = years, NoLimit = false };
        var used = subject.On.PlusYears(-years).PlusDays(-Subject.Past(dice));
        subject.Item = subject.Item with
        {
            FirstUsed = PartialDate.Of(used),
            Manufactured = PartialDate.Of(used.PlusDays(-20)),
            Purchased = null,
            NeverUsed = false,
        };
    }

    private static void StoredTooLong(Subject subject, Dice dice)
    {
        var years = dice.Between(1, 5);
        subject.Limits = subject.Limits with { MaxStorageYears = years, NoLimit = false };
        var used = subject.On.PlusDays(-dice.Between(0, 300));
        subject.Item = subject.Item with
        {
            FirstUsed = PartialDate.Of(used),
            Manufactured = PartialDate.Of(used.PlusYears(-years).PlusDays(-Subject.Past(dice))),
            Purchased = null,
            NeverUsed = false,
        };
    }

    private static void Diameter(Subject subject, Dice dice)
    {
        subject.Limits = subject.Limits with { NominalDiameterMm = 11m, DiameterTolerancePercent = 10m };
        var reading = dice.Chance(50) ? 9.9m - (0.01m * dice.Between(1, 90)) : 12.1m + (0.01m * dice.Between(1, 90));
        subject.Examination = subject.Examination with
        {
            Diameters =
            [
                new DiameterStation { PositionMm = 50m, ReadingsMm = [11m, 11.1m] },
                new DiameterStation { PositionMm = 90m, ReadingsMm = [reading, reading] },
            ],
        };
    }

    private static void NotPermitted(Subject subject, Dice dice)
    {
        if (subject.Whole is { } whole)
        {
            whole.Limits = whole.Limits with { PermittedParts = ["P-none", "P-other"] };
        }
        else
        {
            subject.Answer(Any(subject, dice, c => c.Class == "decisive"), ObservedState.Defect);
        }
    }
}
