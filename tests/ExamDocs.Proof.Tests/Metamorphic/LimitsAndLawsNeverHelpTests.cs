using System.Collections.Concurrent;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Proof.Tests.Comparing;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Metamorphic;

/// <summary>No spelling, no part number left out, no further entry of limits and no further law makes an item better.</summary>
public sealed class LimitsAndLawsNeverHelpTests
{
    private static int Records => Effort.Of(150, 200_000);

    [Fact]
    public void A_part_number_emptied_or_misspelt_never_gives_a_better_outcome() =>
        Never((draft, dice, i) => draft.Item(i)["partNumber"] = dice.One("", "Z-98", "P"));

    [Fact]
    public void A_further_entry_of_limits_for_another_part_never_gives_a_better_outcome() =>
        Never(
            (draft, dice, i) =>
            {
                if (draft.Limit(i) is not { Count: > 0 } limits)
                {
                    return;
                }

                var entry = limits.DeepClone().AsObject();
                (entry["partNumber"], entry["maxUseYears"], entry["maxAgeYears"]) = ("Z-99", dice.Between(1, 30), dice.Between(1, 30));
                draft.Limits.Add(entry);
            }
        );

    [Fact]
    public void A_law_of_its_own_never_gives_a_better_outcome_or_a_later_day() =>
        Never(
            (draft, dice, i) =>
            {
                if (draft.Exam(i) is { Count: > 0 } examination && examination["regime"] is null)
                {
                    examination["regime"] = dice.One("eu-en365", "de", "fr", "au-nz", "us");
                }
            }
        );

    /// <summary>Of kit whose limits are for part numbers, the outcome is no better than by any of the entries alone.</summary>
    [Fact]
    public void Without_its_part_number_it_is_judged_no_better_than_as_any_of_the_parts() =>
        Never(
            (draft, dice, i) =>
            {
                if (draft.Limit(i) is not { Count: > 0 } limits)
                {
                    return;
                }

                limits["partNumber"] = (string?)draft.Item(i)["partNumber"] is { Length: > 0 } own ? own : "P-0";
                draft.Item(i)["partNumber"] = (string?)limits["partNumber"];
            },
            (draft, dice, i) => draft.Item(i)["partNumber"] = dice.One("", "Z-98")
        );

    [Fact]
    public void A_change_for_the_better_is_seen()
    {
        Action<Draft, Dice, int> withdrawn = (draft, _, i) => draft.Exam(i)["conclusion"] = "withdraw";
        Assert.Contains(Enumerable.Range(1, 20), seed =>
            Twice(seed, withdrawn, (_, _, _) => { })
                .Was.Zip(Twice(seed, (_, _, _) => { }, (_, _, _) => { }).Was, (was, now) => IsBetter(now, was))
                .Any(better => better)
        );
    }

    private static void Never(Action<Draft, Dice, int> change) => Never((_, _, _) => { }, change);

    private static void Never(Action<Draft, Dice, int> prepare, Action<Draft, Dice, int> change)
    {
        ConcurrentQueue<string> wrong = new();
        Parallel.For(1L, Records + 1L, seed =>
        {
            var (was, now) = Twice(seed, prepare, change);
            foreach (var (before, after) in was.Zip(now).Where(pair => IsBetter(pair.Second, pair.First)))
            {
                wrong.Enqueue($"seed {seed}: {Text(before)} became {Text(after)}");
            }
        });
        Assert.True(wrong.IsEmpty, string.Join("\n", wrong.Take(10)));
    }

    private static (IReadOnlyList<DeterminedItem> Was, IReadOnlyList<DeterminedItem> Now) Twice(
        long seed,
        Action<Draft, Dice, int> prepare,
        Action<Draft, Dice, int> change
    )
    {
        var dice = Dice.For(seed, 78);
        var draft = Generator.Make(seed);
        var item = dice.Below(draft.Count);
        prepare(draft, dice, item);
        var was = Compared.Programme(draft.Json(), draft.Store, draft.AsOf).Items;
        change(draft, dice, item);
        return (was, Compared.Programme(draft.Json(), draft.Store, draft.AsOf).Items);
    }

    /// <summary>An end of service that is no longer named, because the next examination falls before it, is no better.</summary>
    private static bool IsBetter(DeterminedItem now, DeterminedItem was) =>
        now.NextExaminationBy > was.NextExaminationBy
        || (now.Outcome, was.Outcome) switch
        {
            (Outcome.Fit, Outcome.FitUntil) => now.NextExaminationBy is null || now.NextExaminationBy > was.Until,
            (Outcome.FitUntil, Outcome.FitUntil) => now.Until > was.Until && !(now.NextExaminationBy <= was.Until),
            var (after, before) => after < before,
        };

    private static string Text(DeterminedItem item) =>
        $"{item.Item.Id} {item.Outcome.Word()} until {item.Until} next {item.NextExaminationBy} because {string.Join(" | ", item.Reasons)}";
}
