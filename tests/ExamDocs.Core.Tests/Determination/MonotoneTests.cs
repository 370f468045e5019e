using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>In good and in troubled records, one more adverse thing never improves an outcome or lengthens a use.</summary>
public sealed class MonotoneTests
{
    private static readonly (string Id, string Category)[] Kit =
    [
        ("A", "harness"),
        ("B", "rope-bridge"),
        ("C", "swivel-ring"),
        ("D", "sling"),
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void One_more_adverse_thing_improves_nothing(int seed)
    {
        var random = new Random(seed);
        var wrong = new List<string>();
        for (var trial = 0; trial < 80; trial++)
        {
            var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", "A"), ("C", "swivel-ring", "B"), ("D", "sling", null));
            record.Limits("B").With("nominalDiameterMm", 11.0m).With("diameterTolerancePercent", 10);
            List<PastWithdrawal> history = [];
            var story = new List<string>();
            for (var i = random.Next(4); i > 0; i--)
                story.Add(Worsen(record, history, random));
            var before = Decided.From(record, [.. history]);
            story.Add("then " + Worsen(record, history, random));
            Compare(wrong, before, Decided.From(record, [.. history]), story);
        }
        Assert.Empty(wrong);
    }

    private static void Compare(List<string> wrong, Decided before, Decided after, List<string> story)
    {
        foreach (var (id, _) in Kit)
        {
            var longer = string.CompareOrdinal(before.Until(id), after.Until(id)) < 0 && before.Rank(id) == 1 && after.Rank(id) == 1;
            if (after.Rank(id) < before.Rank(id) || longer)
                wrong.Add($"{id}: {before.Line(id)} to {after.Line(id)} after {string.Join("; ", story)}");
        }
    }

    /// <summary>Adds one adverse thing and takes nothing away.</summary>
    private static string Worsen(JsonObject record, List<PastWithdrawal> history, Random random)
    {
        var (id, category) = Kit[random.Next(Kit.Length)];
        var criteria = Catalogue.Find(category)!.Criteria;
        var criterion = criteria[random.Next(criteria.Count)].Id;
        var day = RecordEdits.Day(2026, random.Next(1, 13), random.Next(1, 29));
        var kind = random.Next(9);
        switch (kind)
        {
            case 0 or 1 or 2:
                string[] states = ["doubt", "defect", "not-examined", "noted", "clera"];
                var state = states[random.Next(states.Length)];
                record
                    .Observations(id)
                    .Insert(
                        0,
                        new JsonObject
                        {
                            ["criterion"] = criterion,
                            ["state"] = state,
                            ["note"] = "seen",
                        }
                    );
                return $"{id} {criterion} {state}";
            case 3:
                record.Later("", day, id);
                return $"{id} later {day}";
            case 4:
                record.Now("", id);
                return $"{id} now";
            case 5:
                record.Conclude("withdraw", id);
                return $"{id} concluded withdraw";
            case 6:
                return Obsolete(record, id, day);
            case 7:
                history.Add(new PastWithdrawal(id, "Q-2025-000001", new LocalDate(2025, 11, 20), ["W1"], false));
                return $"{id} withdrawn before";
            default:
                record["examinations"]!.AsArray().Add(GoodRecord.Examination(id, category, "2026-02-01").With("conclusion", "withdraw"));
                return $"{id} withdrawn earlier in the record";
        }
    }

    /// <summary>A day of obsolescence earlier than the one recorded.</summary>
    private static string Obsolete(JsonObject record, string id, string day)
    {
        var item = record.Item(id);
        if (item["obsoleteOn"] is { } typed && string.CompareOrdinal((string?)typed, day) < 0)
            day = (string)typed!;
        item["obsoleteOn"] = day;
        return $"{id} obsolete on {day}";
    }
}
