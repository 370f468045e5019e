using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Arrays;

/// <summary>A visit with one item per row: each answers its criteria as the row says.</summary>
internal static class ArrayVisit
{
    /// <summary>The last level is no answer at all.</summary>
    public static readonly string[] Levels = ["clear", "noted", "doubt", "defect", "no-sign", "not-examined", "not-applicable", ""];

    public static Draft Of(string category, IReadOnlyList<int[]> rows)
    {
        var draft = Flawless.Many(Dice.For(rows.Count, 3), rows.Count, category);
        for (var i = 0; i < rows.Count; i++)
        {
            Answer(draft, draft.Examinations[i]!.AsObject(), Kinds.All[category], rows[i]);
        }

        return draft;
    }

    /// <summary>A defect is entered as one that is a danger only in two years, so that the answers alone decide.</summary>
    private static void Answer(Draft draft, JsonObject examination, Kind kind, int[] row)
    {
        JsonArray observations = [],
            defects = [];
        foreach (var (criterion, level) in kind.Criteria.Values.Zip(row).Where(pair => Levels[pair.Second] != ""))
        {
            observations.Add(
                new JsonObject
                {
                    ["criterion"] = criterion.Id,
                    ["state"] = Levels[level],
                    ["note"] = "seen",
                }
            );
            if (Levels[level] == "defect")
            {
                var entry = AnswerSlips.Entry(new Dice(1), criterion.Id, "later");
                entry["imminentRisk"] = false;
                entry["becomesDangerOn"] = Flawless.Text(draft.On.AddDays(730));
                defects.Add(entry);
            }
        }

        (examination["observations"], examination["defects"]) = (observations, defects);
    }

    /// <summary>The levels that leave an item in service, a defect entered as a later danger among them.</summary>
    public static IReadOnlyList<int> Harmless(Criterion criterion) =>
        [.. Enumerable.Range(0, Levels.Length).Where(level => !Of(criterion, Levels[level]).Any())];

    /// <summary>The outcome and the reasons of a row in one look, for the arrays too large to go through text.</summary>
    public static string Expected(Kind kind, int[] row)
    {
        var answered = kind.Criteria.Values.Zip(row, (criterion, level) => (Criterion: criterion, State: Levels[level])).ToList();
        SortedSet<string> codes = new(StringComparer.Ordinal);
        foreach (var (criterion, state) in answered)
        {
            codes.UnionWith(Of(criterion, state));
        }

        if (codes.Overlaps(["W1", "W2", "U2"]) || answered.TrueForAll(a => a.State == ""))
        {
            codes.Add("U3");
        }

        if (codes.Count == 0 && answered.Exists(a => a.State == "defect"))
        {
            codes.Add("D1");
        }

        return $"{Outcome(codes)} {string.Join(' ', codes)}";
    }

    private static IEnumerable<string> Of(Criterion criterion, string state) =>
        state switch
        {
            "doubt" => ["W2"],
            "defect" when criterion.Class == "decisive" => ["W1"],
            "" or "not-examined" => criterion.Required ? ["U1"] : [],
            _ => FoundRules.Allows(criterion, state) ? [] : ["U2"],
        };

    private static string Outcome(SortedSet<string> codes) =>
        codes.Any(code => code[0] == 'W') ? "withdraw"
        : codes.Any(code => code[0] == 'U') ? "undetermined"
        : codes.Count > 0 ? "fit-until"
        : "fit";
}
