using System.Text;
using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Proof.Tests.Generating;
using NodaTime;

namespace ExamDocs.Proof.Tests.Adverse;

/// <summary>A visit of many items, each with at least one reason to withdraw it and anything else besides.</summary>
internal static class AdverseVisit
{
    public const int Items = 40;

    private static readonly ObservedState[] States = Enum.GetValues<ObservedState>();

    private static readonly Lazy<IReadOnlyList<ExaminationRecord>> Flawless40 = new(() => [.. Enumerable.Range(1, 64).Select(Read)]);

    public static ExaminationRecord Base(long seed) => Flawless40.Value[(int)(seed % Flawless40.Value.Count)];

    /// <summary>The names of the reasons given to each item, and what the programme made of them.</summary>
    public static (IReadOnlyList<string> Given, DeterminedVisit Visit) Determined(long seed, bool adverse)
    {
        var dice = Dice.For(seed, 7);
        var record = Base(seed);
        var subjects = Subjects(record);
        List<string> given = [];
        foreach (var subject in subjects)
        {
            Anything(subject, dice);
            var (name, apply) = dice.Of(ReasonsToWithdraw.All);
            given.Add(name);
            if (adverse)
            {
                apply(subject, dice);
            }
        }

        var changed = record with
        {
            Items = [.. subjects.Select(s => s.Item)],
            Limits = [.. subjects.Select(s => s.Limits)],
            Examinations = [.. subjects.Select(s => s.Examination)],
        };
        var holds = subjects
            .Where(s => s.HasOpenHold)
            .Select(s => new PastWithdrawal(s.Item.Id!, "Q-2020-000001", s.On.PlusDays(-100), ["W1"], false));
        return (given, Determine.Visit(changed, [], new History([.. holds]), record.Visit.ExaminedOn!.Value.PlusDays(3)));
    }

    private static ExaminationRecord Read(int seed)
    {
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(Flawless.Many(Dice.For(seed, 1), Items).Json()), "record.json");
        return read.Record!;
    }

    private static List<Subject> Subjects(ExaminationRecord record)
    {
        List<Subject> subjects = [];
        for (var i = 0; i < record.Items.Count; i++)
        {
            var item = record.Items[i];
            subjects.Add(
                new Subject
                {
                    Item = item,
                    Examination = record.Examinations[i],
                    Limits = record.Limits[i],
                    On = record.Visit.ExaminedOn!.Value,
                    Whole = subjects.Find(s => s.Item.Id == item.FittedTo),
                }
            );
        }

        return subjects;
    }

    /// <summary>What may be recorded besides: it must not make the outcome better.</summary>
    private static void Anything(Subject subject, Dice dice)
    {
        for (var n = dice.Below(4); n > 0; n--)
        {
            var criterion = dice.Of(subject.Examination.Observations).Criterion!;
            subject.Answer(criterion, dice.Of(States));
        }

        if (dice.Chance(20))
        {
            subject.Limits = subject.Limits with { NoLimit = true, MaxUseYears = null, MaxAgeYears = null, MaxStorageYears = null };
        }

        if (dice.Chance(20))
        {
            subject.Enter("marking", Danger.Later, subject.On.PlusDays(dice.Between(1, 300)), false, dice.Chance(80) ? "renew" : null);
        }

        if (dice.Chance(20))
        {
            var day = subject.On.PlusDays(-200);
            subject.Item = subject.Item with
            {
                Manufactured = null,
                FirstUsed = dice.Chance(50) ? null : PartialDate.Of(day),
                NeverUsed = dice.Chance(30),
            };
        }

        if (dice.Chance(20))
        {
            subject.Examination = subject.Examination with
            {
                NextBy = subject.On.PlusDays(dice.Between(-5, 400)),
                Regime = dice.One("gb-loler", "gb-wah", null),
            };
        }
    }
}
