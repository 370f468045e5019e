using System.Collections.Concurrent;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.Histories.Making;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>
/// However the same facts are spelt, split into files or put in order, no item that is withdrawn comes out fit or fit-until: neither by the
/// programme nor by the second evaluator.
/// </summary>
public sealed class SameFactsOtherwiseTests
{
    private static readonly DateOnly Last = new(2027, 6, 1);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void In_another_spelling(bool programme) =>
        Never(
            (history, dice) =>
                Better(Said(history, programme).SelectMany(r => r), Said(Rewriting.Respelt(history, dice), programme).SelectMany(r => r))
        );

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void In_other_files(bool programme) =>
        Never(
            (history, _) => Said(history, programme).Zip(Said(Rewriting.Split(history), programme), BetterById).SelectMany(wrong => wrong)
        );

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void In_another_order(bool programme) =>
        Never(
            (history, dice) =>
            {
                Run last = Rewriting.LookAgain(history, Last);
                return Better(Said([.. history, last], programme)[^1], Said([.. Rewriting.Shuffled(history, dice), last], programme)[^1]);
            }
        );

    [Fact]
    public void An_item_that_came_out_better_is_seen()
    {
        Said withdrawn = new("RB-1", "withdraw", null, null, new HashSet<string> { "W10" });
        Assert.Single(Better([withdrawn], [withdrawn with { Outcome = "fit-until" }]));
        Assert.Single(BetterById([withdrawn], [withdrawn with { Outcome = "fit" }]));
        Assert.Empty(Better([withdrawn], [withdrawn with { Outcome = "undetermined" }]));
    }

    private static IEnumerable<string> Better(IEnumerable<Said> was, IEnumerable<Said> now) =>
        was.Zip(now)
            .Where(pair => pair.First.Withdrawn && pair.Second.Outcome is "fit" or "fit-until")
            .Select(pair => Words(pair.First, pair.Second));

    private static IEnumerable<string> BetterById(IEnumerable<Said> was, IEnumerable<Said> now)
    {
        var after = now.ToLookup(said => said.Item, StringComparer.Ordinal);
        return was.GroupBy(said => said.Item, StringComparer.Ordinal)
            .Where(item => item.All(said => said.Withdrawn))
            .SelectMany(item =>
                after[item.Key].Where(said => said.Outcome is "fit" or "fit-until").Select(said => Words(item.First(), said))
            );
    }

    private static string Words(Said was, Said now) => $"{was.Item} withdrawn by {was.Deciding} became {now.Item} {now.Outcome}";

    /// <summary>Of each run, what is said of every item.</summary>
    private static List<List<Said>> Said(IReadOnlyList<Run> history, bool programme)
    {
        using var runner = programme ? Programme.InMemory() : new Recalled();
        return [.. history.Select(run => runner.Run(run).SelectMany(record => record).ToList())];
    }

    private static void Never(Func<IReadOnlyList<Run>, Dice, IEnumerable<string>> wrongs)
    {
        var histories = Effort.Of(50, 20_000);
        ConcurrentQueue<string> wrong = new();
        Parallel.For(1L, histories + 1L, seed =>
        {
            var history = Chronicle.Of(seed, prints: false);
            foreach (var text in wrongs(history, Dice.For(seed, 78)).Take(1))
            {
                wrong.Enqueue($"seed {seed}: {text}");
            }
        });
        Assert.True(wrong.IsEmpty, $"{wrong.Count} of {histories}\n" + string.Join("\n", wrong.Order(StringComparer.Ordinal).Take(12)));
    }
}
