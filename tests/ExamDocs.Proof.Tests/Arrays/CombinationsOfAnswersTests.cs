using System.Collections.Concurrent;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Proof.Tests.Comparing;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Arrays;

/// <summary>All combinations of two and of three answers in every category, and of six on rope bridges.</summary>
public sealed class CombinationsOfAnswersTests
{
    private const int PerVisit = 50;

    public static TheoryData<string> Categories => [.. Kinds.All.Keys];

    [Theory]
    [MemberData(nameof(Categories))]
    public void Pairs_and_triples_of_answers_have_the_outcome_of_the_second_evaluator(string category) => Compare(category, row => row);

    /// <summary>So that no doubt and no gap hides what the other answers do together.</summary>
    [Theory]
    [MemberData(nameof(Categories))]
    public void Pairs_and_triples_of_answers_that_leave_an_item_in_service(string category)
    {
        var harmless = Kinds.All[category].Criteria.Values.Select(ArrayVisit.Harmless).ToList();
        Compare(category, row => [.. row.Select((level, c) => harmless[c][level % harmless[c].Count])]);
    }

    private static void Compare(string category, Func<int[], int[]> fold)
    {
        var strength = Effort.Full ? 3 : 2;
        var array = new PolynomialArray(Kinds.All[category].Criteria.Count, ArrayVisit.Levels.Length, strength);
        List<int[]> rows = [.. Enumerable.Range(0, (int)array.Rows).Select(n => array.Row(n))];
        Assert.Empty(CoverageCounter.Missing(rows, array.Columns, ArrayVisit.Levels.Length, strength));
        ConcurrentDictionary<string, int> outcomes = new();
        ConcurrentQueue<string> wrong = new();
        Parallel.ForEach(rows.Select(fold).Chunk(PerVisit), chunk =>
        {
            foreach (var (pair, row) in Compared.Pairs(ArrayVisit.Of(category, chunk)).Zip(chunk))
            {
                outcomes.AddOrUpdate(pair.Second.Outcome, 1, (_, n) => n + 1);
                if (!pair.Agrees || $"{pair.Second.Outcome} {pair.Second.CodesText}" != ArrayVisit.Expected(Kinds.All[category], row))
                {
                    wrong.Enqueue($"{string.Join(' ', row.Select(level => ArrayVisit.Levels[level]))}\n{pair}");
                }
            }
        });
        Console.WriteLine(
            $"{category}: {rows.Count} rows, all combinations of {strength}: "
                + $"{string.Join(", ", outcomes.Select(o => $"{o.Key} {o.Value}"))}"
        );
        Assert.True(wrong.IsEmpty, string.Join("\n", wrong.Take(5)));
    }

    [Fact]
    public void Six_answers_of_a_rope_bridge_in_every_combination() => Six(ArrayVisit.Levels.Length, 3_000_000, row => row);

    [Fact]
    public void Six_answers_of_a_rope_bridge_that_leave_it_in_service()
    {
        var harmless = Kinds.All["rope-bridge"].Criteria.Values.Select(ArrayVisit.Harmless).ToList();
        Six(harmless.Max(levels => levels.Count), 500_000, row => [.. row.Select((level, c) => harmless[c][level % harmless[c].Count])]);
    }

    /// <summary>With little effort rows of the drawn array only, not all that it takes to show every combination.</summary>
    private static void Six(int levels, int drawn, Func<int[], int[]> fold)
    {
        var kind = Kinds.All["rope-bridge"];
        var columns = kind.Criteria.Count;
        var rows = Effort.Full
            ? DrawnArray.Covering(columns, levels, 6, drawn)
            : [.. Enumerable.Range(0, Effort.Of(2_000, 0)).Select(n => DrawnArray.Row(columns, levels, n))];
        if (Effort.Full)
        {
            Assert.Empty(CoverageCounter.Missing(rows, columns, levels, 6));
        }

        ConcurrentDictionary<string, int> outcomes = new();
        ConcurrentQueue<string> wrong = new();
        SixByTemplate template = new(PerVisit);
        Parallel.ForEach(rows.Chunk(PerVisit).Where(chunk => chunk.Length == PerVisit).Append([.. rows.TakeLast(PerVisit)]), chunk =>
        {
            int[][] folded = [.. chunk.Select(fold)];
            foreach (var (item, row) in template.Determined(folded).Zip(folded))
            {
                outcomes.AddOrUpdate(item.Outcome.Word(), 1, (_, n) => n + 1);
                if (Said(item) != ArrayVisit.Expected(kind, row))
                {
                    wrong.Enqueue($"{string.Join(' ', row.Select(level => ArrayVisit.Levels[level]))}: {Said(item)}");
                }
            }
        });
        Console.WriteLine(
            $"rope-bridge: {rows.Count} rows drawn of {levels} levels for all combinations of six: "
                + $"{string.Join(", ", outcomes.Select(o => $"{o.Key} {o.Value}"))}"
        );
        Assert.True(wrong.IsEmpty, string.Join("\n", wrong.Take(5)));
    }

    [Fact]
    public void A_drawn_array_shows_every_combination()
    {
        var few = DrawnArray.Covering(17, 8, 3, 1_000);
        Assert.InRange(few.Count, 1_001, 100_000);
        Assert.Empty(CoverageCounter.Missing(few, 17, 8, 3));
    }

    [Fact]
    public void The_counter_sees_a_missing_combination()
    {
        var array = new PolynomialArray(5, 8, 2);
        List<int[]> rows = [.. Enumerable.Range(0, (int)array.Rows).Select(n => array.Row(n)).Where(row => row[1] != 3 || row[4] != 2)];
        var missing = Assert.Single(CoverageCounter.Missing(rows, 5, 8, 2), m => m.Columns is [1, 4]);
        Assert.Equal([3, 2], missing.Levels);
        Assert.NotEmpty(CoverageCounter.Missing([.. rows.Select(row => row[1] == 3 && row[4] == 2 ? [.. row[..4], 1] : row)], 5, 8, 2));
    }

    [Fact]
    public void A_row_determined_as_another_is_seen()
    {
        var kind = Kinds.All["rope-bridge"];
        var row = new int[kind.Criteria.Count];
        int[] other = [2, .. row[1..]];
        var said = Said(new SixByTemplate(1).Determined([row]).Single());
        Assert.Equal(ArrayVisit.Expected(kind, row), said);
        Assert.NotEqual(ArrayVisit.Expected(kind, other), said);
    }

    private static string Said(DeterminedItem item) =>
        $"{item.Outcome.Word()} {string.Join(' ', item.Reasons.Select(reason => reason.Code).Distinct().Order(StringComparer.Ordinal))}";
}
