using System.Collections.Concurrent;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Proof.Tests.Comparing;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Metamorphic;

/// <summary>How the outcome may change, and may not, when a record is changed in a known way.</summary>
public sealed class SameRecordOtherwiseTests
{
    private static int Records => Effort.Of(150, 200_000);

    [Fact]
    public void A_change_for_the_worse_never_gives_a_better_outcome() =>
        Never(
            (seed, dice) =>
            {
                var draft = Generator.Make(seed);
                var (name, apply) = dice.Of(AdverseChanges.All);
                var before = Outcomes(draft);
                apply(draft, dice, dice.Below(draft.Count));
                return Outcomes(draft)
                    .Zip(before, (after, was) => after.Outcome < was.Outcome ? $"{name}: {Text(was)} became {Text(after)}" : null);
            }
        );

    [Fact]
    public void A_required_answer_missing_or_misspelt_never_leaves_an_item_fit() =>
        Never(
            (seed, dice) =>
            {
                var draft = Generator.Make(seed);
                var item = dice.Below(draft.Count);
                var required = dice.Of([.. draft.Kind(item).Criteria.Values.Where(c => c.Required)]).Id;
                var answers = Draft.List(draft.Exam(item), "observations");
                if (Kinds.All.ContainsKey((string?)draft.Item(item)["category"] ?? "") && dice.Chance(50))
                {
                    answers.RemoveAll(o => (string?)o!["criterion"] == required);
                }
                else
                {
                    draft.Answer(item, required)["state"] = dice.One("claer", "Clear", "fit", "-");
                }

                return
                [
                    Outcomes(draft)[item] is { Outcome: Outcome.Fit or Outcome.FitUntil } after && answers.Count > 0
                        ? $"{required}: {Text(after)}"
                        : null,
                ];
            }
        );

    [Fact]
    public void The_order_of_the_rows_changes_nothing() =>
        Never(
            (seed, dice) =>
            {
                var draft = Generator.Make(seed);
                return Differences(draft, Rearranged.Shuffled(draft, dice), id => id);
            }
        );

    [Fact]
    public void Other_ids_change_nothing() =>
        Never(
            (seed, _) =>
            {
                var draft = Generator.Make(seed);
                return Differences(draft, Rearranged.Renamed(draft), Rearranged.NewItem);
            }
        );

    [Fact]
    public void A_reason_dropped_is_a_difference_that_is_seen()
    {
        var draft = Generator.Make(1);
        Draft.List(draft.Exam(0), "observations")[0]!["state"] = "doubt";
        Draft.List(draft.Exam(0), "observations")[0]!["note"] = "seen";
        var dropped = Rearranged.Renamed(draft);
        Draft.List(dropped.Exam(0), "observations")[0]!["state"] = "clear";
        Assert.Contains(Differences(draft, dropped, Rearranged.NewItem), difference => difference is not null);
    }

    private static IEnumerable<string?> Differences(Draft draft, Draft other, Func<string, string> id)
    {
        var before = Outcomes(draft)
            .Select(item => (Said: id(item.Item.Id ?? "") + Text(item), Errors(item)))
            .OrderBy(i => i.Said, StringComparer.Ordinal);
        var after = Outcomes(other)
            .Select(item => (Said: item.Item.Id + Text(item), Errors(item)))
            .OrderBy(i => i.Said, StringComparer.Ordinal);
        return before.Zip(after, (was, now) => was.Said == now.Said ? null : $"{was} became {now}");
    }

    private static string Errors(DeterminedItem item) =>
        string.Join(' ', item.Findings.Where(f => f.Severity == Core.Findings.Severity.Error).Select(f => f.Code + f.Path));

    private static IReadOnlyList<DeterminedItem> Outcomes(Draft draft) => Compared.Programme(draft.Json(), draft.Store, draft.AsOf).Items;

    private static string Text(DeterminedItem item) =>
        $" {item.Outcome.Word()} until {item.Until} next {item.NextExaminationBy} because "
        + string.Join(' ', item.Reasons.Select(r => r.Code).Distinct().Order(StringComparer.Ordinal));

    private static void Never(Func<long, Dice, IEnumerable<string?>> wrongs)
    {
        ConcurrentQueue<string> wrong = new();
        Parallel.For(1L, Records + 1L, seed =>
        {
            foreach (var text in wrongs(seed, Dice.For(seed, 55)).OfType<string>())
            {
                wrong.Enqueue($"seed {seed} ({string.Join(" + ", Generator.Chosen(seed).Select(c => c.Slip.Name))}) {text}");
            }
        });
        Assert.True(wrong.IsEmpty, $"{wrong.Count} of {Records}\n" + string.Join("\n", wrong.Order(StringComparer.Ordinal).Take(12)));
    }
}
