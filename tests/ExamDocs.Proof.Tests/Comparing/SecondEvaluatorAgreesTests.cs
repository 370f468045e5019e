using System.Collections.Concurrent;
using System.Text;
using ExamDocs.Core.Criteria;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Comparing;

/// <summary>The programme and an evaluator written apart from it say the same of every generated record.</summary>
public sealed class SecondEvaluatorAgreesTests
{
    private static readonly string[] Codes =
    [
        "W1",
        "W2",
        "W3",
        "W4",
        "W5",
        "W6",
        "W7",
        "W8",
        "W9",
        "W10",
        "U0",
        "U1",
        "U2",
        "U3",
        "U4",
        "U5",
        "U6",
        "D1",
        "D2",
        "D3",
    ];

    [Fact]
    public void The_catalogue_it_reads_is_the_one_that_is_printed() => Assert.Equal(Catalogue.ToJson().Trim(), Kinds.Text().Trim());

    [Fact]
    public void Both_say_the_same_of_every_generated_record()
    {
        var records = Effort.Of(1_000, 1_000_000);
        ConcurrentDictionary<string, int> seen = new();
        ConcurrentDictionary<string, long> disagreements = new();
        Parallel.For(1L, records + 1L, seed => Count(seed, seen, disagreements));
        Print(records, seen);
        Assert.True(disagreements.IsEmpty, Report(disagreements));
        Assert.True(
            seen["exact"] * 5L >= (seen["exact"] + seen.GetValueOrDefault("lenient")) * 4L,
            "Fewer than four of five were compared exactly."
        );
        Assert.All(Codes, code =>
            Assert.True(seen.GetValueOrDefault(code) >= (records >= 1_000_000 ? 1000 : 1), $"{code} was not seen often enough.")
        );
    }

    private static void Count(long seed, ConcurrentDictionary<string, int> seen, ConcurrentDictionary<string, long> disagreements)
    {
        foreach (var pair in Compared.Pairs(Generator.Make(seed)))
        {
            Add(seen, pair.Lenient ? "lenient" : "exact");
            Add(seen, pair.Second.Outcome);
            foreach (var reason in pair.Programme.Reasons.Select(reason => reason.Code).Distinct())
            {
                Add(seen, reason);
            }

            if (!pair.Agrees)
            {
                var kind = $"{pair.Second.Outcome} {pair.Second.CodesText} | {pair.Programme.Outcome} {pair.Codes}";
                disagreements.AddOrUpdate(kind, seed, (_, other) => Math.Min(seed, other));
                Add(seen, "disagreements");
            }
        }
    }

    private static void Add(ConcurrentDictionary<string, int> seen, string what) => seen.AddOrUpdate(what, 1, (_, n) => n + 1);

    private static void Print(int records, ConcurrentDictionary<string, int> seen) =>
        Console.WriteLine(
            $"{records} records: " + string.Join(", ", seen.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key} {s.Value}"))
        );

    private static string Report(ConcurrentDictionary<string, long> disagreements)
    {
        StringBuilder text = new($"{disagreements.Count} kinds of disagreement\n");
        foreach (var (kind, seed) in disagreements.OrderBy(d => d.Value).Take(25))
        {
            var (changes, pair, draft) = Shrunk(seed);
            text.AppendLine($"--- {kind}\nseed {seed}: {string.Join(" + ", changes.Select(c => c.Slip.Name))}\n{pair}");
            if (disagreements.Count < 8)
            {
                text.AppendLine(draft.Json(indented: true));
            }
        }

        return text.ToString();
    }

    private static (List<(int Step, Slip Slip)> Changes, Pair Pair, Draft Draft) Shrunk(long seed)
    {
        List<(int Step, Slip Slip)> changes = [.. Generator.Chosen(seed)];
        for (var i = changes.Count - 1; i >= 0; i--)
        {
            var fewer = changes.Where((_, index) => index != i).ToList();
            if (Compared.Pairs(Generator.Make(seed, fewer)).Any(pair => !pair.Agrees))
            {
                changes = fewer;
            }
        }

        var draft = Generator.Make(seed, changes);
        return (changes, Compared.Pairs(draft).First(pair => !pair.Agrees), draft);
    }
}
