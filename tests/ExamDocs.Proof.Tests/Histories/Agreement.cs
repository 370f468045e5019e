using System.Collections.Concurrent;
using System.Text;
using ExamDocs.Proof.Tests.Histories.Making;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>
/// Holds many histories of the programme against the second evaluator, and says where they differ. The programme is never kinder.
/// </summary>
internal sealed class Agreement
{
    private static readonly string[] Codes = ["W1", "W2", "W3", "W4", "W6", "W8", "W9", "W10", "W11", "U1", "U3", "U6", "D1", "D3"];

    /// <summary>
    /// Of a hundred histories in so many, inclusive, the programme may be stricter than the second evaluator: it asks, or holds,
    /// where ids are ambiguous (docs/proof.md).
    /// </summary>
    private const long MostStricter = 3;

    /// <summary>
    /// Of a thousand histories in so many, inclusive, the programme may hold what the second evaluator withdraws, where one id
    /// stands for two things: neither may be used. It never lets anything pass that the second evaluator does not.
    /// </summary>
    private const long MostHeld = 1;

    private readonly ConcurrentDictionary<string, int> _seen = new();
    private readonly ConcurrentDictionary<string, long> _disagreements = new();
    private readonly ConcurrentDictionary<string, long> _codes = new();

    /// <summary>By seed, where the programme lets something pass that the second evaluator does not: each is to be looked at.</summary>
    private readonly ConcurrentDictionary<long, string> _passes = new();

    /// <param name="histories">How many.</param>
    /// <param name="prints">Whether withdrawals get labels that a release can name.</param>
    /// <param name="programme">A fresh one for a seed and an attempt.</param>
    /// <param name="shown">Of how many kinds of disagreement a small history is looked for.</param>
    public static void Check(int histories, bool prints, Func<long, int, IHistoryRunner> programme, int shown = 3)
    {
        Agreement agreement = new();
        Parallel.For(Effort.After + 1L, Effort.After + histories + 1L, seed =>
            agreement.Count(seed, Beside.Of(Chronicle.Of(seed, prints), () => programme(seed, 0)))
        );
        Console.WriteLine(
            $"{histories} histories after {Effort.After}: "
                + string.Join(", ", agreement._seen.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key} {s.Value}"))
        );
        Assert.True(
            agreement.Of("passes") == 0
                && agreement.Of("only held") * 1000L <= Math.Max(1000, histories * MostHeld)
                && agreement.Of("disagreements") * 100L <= histories * MostStricter,
            agreement.Report(prints, programme, shown)
        );
        Assert.True(
            agreement.Of("exact") * 5L >= (agreement.Of("exact") + agreement.Of("lenient")) * 4L,
            "Fewer than four of five were compared exactly."
        );
        Assert.All(histories > 200 ? Codes : [], code => Assert.True(agreement.Of(code) > 0, $"{code} was not seen."));
    }

    private int Of(string what) => _seen.GetValueOrDefault(what);

    /// <summary>
    /// Of one run what only the programme's holding an item explains comes first: from it follows what the second evaluator says of
    /// the items that it withdraws on account of that one.
    /// </summary>
    private static IEnumerable<Beside> InOrder(IEnumerable<Beside> pairs) =>
        pairs
            .GroupBy(pair => pair.Run)
            .SelectMany(run => run.OrderBy(pair => !pair.Agrees && pair.IsKinder && !pair.Programme.IsForUse ? 0 : 1));

    private void Count(long seed, IEnumerable<Beside> pairs)
    {
        foreach (var pair in InOrder(pairs))
        {
            Add(pair.IsLenient ? "lenient" : "exact");
            Add(pair.Second.Outcome);
            foreach (var code in pair.Programme.Unsure ? pair.Programme.Words.Split("; ").Select(w => "error " + w.Split(' ')[0]) : [])
            {
                Add(code);
            }

            if (pair.Second.Unsure)
            {
                Add("second unsure");
            }

            foreach (var code in pair.Programme.Codes)
            {
                Add(code);
            }

            if (pair.Agrees && pair.IsInOtherCodes)
            {
                Add("codes " + pair.Kind);
                _codes.AddOrUpdate(pair.Kind, seed, (_, other) => Math.Min(seed, other));
            }

            if (!pair.Agrees)
            {
                Add("disagreements");
                if (pair.IsKinder)
                {
                    Add(pair.Programme.IsForUse ? "passes" : "only held");
                }

                if (pair.IsKinder && pair.Programme.IsForUse)
                {
                    _passes[seed] = pair.Kind;
                }

                _disagreements.AddOrUpdate(pair.Kind, seed, (_, other) => Math.Min(seed, other));
                Add(pair.Kind);
                // What follows from it would be counted again.
                return;
            }
        }
    }

    private void Add(string what) => _seen.AddOrUpdate(what, 1, (_, n) => n + 1);

    private string Report(bool prints, Func<long, int, IHistoryRunner> programme, int shown)
    {
        StringBuilder text = new(
            $"{_disagreements.Count} kinds of disagreement, in {Of("disagreements")} histories; the programme lets pass "
                + $"{Of("passes")}, and only holds {Of("only held")}\n"
        );
        text.AppendJoin('\n', _disagreements.OrderByDescending(d => Of(d.Key)).Select(d => $"{d.Key}: {Of(d.Key)} times, seed {d.Value}"))
            .AppendLine();
        foreach (var (seed, kind) in _passes.OrderBy(p => p.Key).Take(shown))
        {
            Show(kind, seed, "passes");
        }

        foreach (var (kind, seed) in _disagreements.OrderByDescending(d => Of(d.Key)).Where(d => !_passes.ContainsKey(d.Value)).Take(shown))
        {
            Show(kind, seed, FormattableString.Invariant($"{Of(kind)} times"));
        }

        return text.ToString();

        void Show(string kind, long seed, string count)
        {
            var attempt = 0;
            var small = Shrinking.Smallest(Chronicle.Of(seed, prints), history => First(history)?.Kind == kind);
            var pairs = Pairs(small);
            text.AppendLine(
                $"--- {kind} ({count})\nseed {seed}: {InOrder(pairs).FirstOrDefault(pair => !pair.Agrees)}\n{Summary.Of(small)}before it:"
            );
            text.AppendJoin('\n', pairs.TakeWhile(pair => pair.Agrees)).AppendLine();
            text.AppendLine("after it:").AppendJoin('\n', pairs.SkipWhile(pair => pair.Agrees).Skip(1)).AppendLine();

            Beside? First(IReadOnlyList<Run> history) => InOrder(Pairs(history)).FirstOrDefault(pair => !pair.Agrees);
            IEnumerable<Beside> Pairs(IReadOnlyList<Run> history) => Beside.Of(history, () => programme(seed, ++attempt));
        }
    }
}
