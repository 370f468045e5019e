using System.Collections.Concurrent;
using System.Diagnostics;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;

namespace ExamDocs.Proof.Tests.Adverse;

/// <summary>Whatever has a reason to withdraw it is withdrawn. Counted in items examined, 40 to a visit.</summary>
public sealed class NoneComesOutBetterTests
{
    [Fact]
    public void None_of_the_items_with_a_reason_to_withdraw_comes_out_better()
    {
        var visits = Effort.Of(10_000, 10_000_000) / AdverseVisit.Items;
        ConcurrentDictionary<string, int> given = new();
        ConcurrentQueue<string> better = new();
        var watch = Stopwatch.StartNew();
        Parallel.For(1L, visits + 1L, seed =>
        {
            var (names, visit) = AdverseVisit.Determined(seed, adverse: true);
            for (var i = 0; i < names.Count; i++)
            {
                given.AddOrUpdate(names[i], 1, (_, n) => n + 1);
                Note(better, seed, names[i], visit.Items[i]);
            }
        });
        Console.WriteLine(
            $"{visits * AdverseVisit.Items} items with a reason to withdraw in {visits} visits, "
                + $"{watch.Elapsed.TotalMilliseconds / visits / AdverseVisit.Items:0.000} ms each: "
                + string.Join(", ", given.OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => $"{g.Key} {g.Value}"))
        );
        Assert.True(better.IsEmpty, string.Join("\n", better.Take(20)));
        Assert.All(ReasonsToWithdraw.All, reason => Assert.True(given.GetValueOrDefault(reason.Name) > 0, reason.Name));
    }

    [Fact]
    public void The_same_visits_without_their_reasons_would_fail_it()
    {
        ConcurrentQueue<string> better = new();
        for (var seed = 1L; seed <= 5; seed++)
        {
            var (names, visit) = AdverseVisit.Determined(seed, adverse: false);
            for (var i = 0; i < names.Count; i++)
            {
                Note(better, seed, names[i], visit.Items[i]);
            }
        }

        Assert.True(better.Count > 20, $"{better.Count} came out better");
    }

    private static void Note(ConcurrentQueue<string> better, long seed, string name, DeterminedItem item)
    {
        if (item.Outcome != Outcome.Withdraw)
        {
            better.Enqueue(
                $"seed {seed}, {item.Item.Id}, {name}: {item.Outcome.Word()} because {string.Join(' ', item.Reasons.Select(r => r.Code))}"
            );
        }
    }
}
