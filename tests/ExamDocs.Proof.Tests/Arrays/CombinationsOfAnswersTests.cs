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
        Assert.Equal(0, CoverageCounter.Missing(rows, array.Columns, ArrayVisit.Levels.Length, strength));
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
        Console.WriteLine($"{category}: {rows.Count} rows, all combinations of {strength}: {string.Join(", ", outcomes.Select(o => $"{o.Key} {o.Value}"))}");
        Assert.True(wrong.IsEmpty, string.Join("\n", wrong.Take(5)));
    }

    [Fact]
    public void Six_answers_of_a_rope_bridge_in_every_combination()
    {
        var array = new PolynomialArray(17, ArrayVisit.Levels.Length, 6);
        Assert.Equal(array.Columns, Kinds.All["rope-bridge"].Criteria.Count);
        var visits = Math.Min(Effort.Of(2_000, int.MaxValue), array.Rows) / PerVisit;
        ConcurrentDictionary<string, int> outcomes = new();
        ConcurrentQueue<string> wrong = new();
        SixByTemplate template = new(PerVisit);
        Parallel.For(0L, visits, visit =>
        {
            var first = Effort.Full ? visit * PerVisit : visit * 7919 * PerVisit % (array.Rows - PerVisit);
            int[][] rows = [.. Enumerable.Range(0, PerVisit).Select(i => array.Row(first + i))];
            foreach (var (item, row) in template.Determined(rows).Zip(rows))
            {
                outcomes.AddOrUpdate(item.Outcome.Word(), 1, (_, n) => n + 1);
                if (Said(item) != ArrayVisit.Expected(Kinds.All["rope-bridge"], row))
                {
                    wrong.Enqueue($"{string.Join(' ', row.Select(level => ArrayVisit.Levels[level]))}: {Said(item)}");
                }
            }
        });
        Console.WriteLine($"rope-bridge: {visits * PerVisit} of {array.Rows} rows of the array of six: {string.Join(", ", outcomes.Select(o => $"{o.Key} {o.Value}"))}");
        Assert.True(wrong.IsEmpty, string.Join("\n", wrong.Take(5)));
    }

    [Fact]
    public void The_counter_sees_a_missing_combination()
    {
        var array = new PolynomialArray(5, 8, 2);
        List<int[]> rows = [.. Enumerable.Range(0, (int)array.Rows).Select(n => array.Row(n)).Where(row => row[1] != 3 || row[4] != 2)];
        Assert.Equal(1, CoverageCounter.Missing(rows, [1, 4], 8));
        Assert.True(CoverageCounter.Missing(rows, 5, 8, 2) >= 1);
    }

    [Fact]
    public void Any_six_columns_of_the_array_of_six_show_every_combination()
    {
        var levels = ArrayVisit.Levels.Length;
        var array = new PolynomialArray(17, levels, Effort.Full ? 6 : 3);
        int[][] sets = Effort.Full ? [[0, 1, 2, 3, 4, 5], [2, 5, 7, 11, 13, 16]] : [[0, 8, 16], [3, 4, 5]];
        foreach (var set in sets)
        {
            Assert.Equal(0, CoverageCounter.Missing(Rows(array), set, levels));
        }
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

    private static IEnumerable<int[]> Rows(PolynomialArray array)
    {
        for (var n = 0L; n < array.Rows; n++)
        {
            yield return array.Row(n);
        }
    }
}
