using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>The order of rows, answers and members in the input never changes an outcome.</summary>
public sealed class OrderTests
{
    private static readonly Lazy<JsonObject> Example = new(() => JsonNode.Parse(File.ReadAllText(ExamplePath()))!.AsObject());

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_example_visit_shuffled_gives_the_same_outcomes(int seed)
    {
        var before = Decided.From(Example.Value);
        var after = Decided.From(Shuffle(Example.Value, new Random(seed))!);

        Assert.Equal(62, before.Count);
        Assert.Equal(Lines(before), Lines(after));
    }

    [Fact]
    public void The_example_holds_every_outcome()
    {
        var decided = Decided.From(Example.Value);

        Assert.Equal(
            "fit fit-until undetermined withdraw",
            string.Join(' ', decided.Ids.Select(id => decided.Outcome(id!)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        );
    }

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void A_troubled_record_shuffled_gives_the_same_outcomes(int seed)
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", "A"), ("C", "swivel-ring", "B"), ("DD-9", "sling", null))
            .Answer("marking", "defect", "B")
            .Later("marking", "2026-08-01", "B")
            .Later("marking", "2026-07-01", "B")
            .Answer("identity", "clera", "C")
            .Answer("cut", "defect", "DD-9")
            .Conclude("withdraw", "DD-9");
        record.Observations("DD-9").Add(new JsonObject { ["criterion"] = "cut", ["state"] = "clear" });
        record["examinations"]!.AsArray().Add(GoodRecord.Examination("DD-9", "sling", "2026-01-05").With("conclusion", "withdraw"));
        record["examinations"]!.AsArray().Add(GoodRecord.Examination("A", "harness"));

        Assert.Equal(Lines(Decided.From(record)), Lines(Decided.From(Shuffle(record, new Random(seed))!)));
    }

    private static string Lines(Decided decided) =>
        string.Join('\n', decided.Ids.Select(id => $"{id} {decided.Line(id!)}").Order(StringComparer.Ordinal));

    /// <summary>Readings at one place have no order either, so every list may be shuffled.</summary>
    private static JsonNode? Shuffle(JsonNode? node, Random random) =>
        node switch
        {
            JsonObject row => new JsonObject(Mixed(row, random).Select(m => KeyValuePair.Create(m.Key, Shuffle(m.Value, random)))),
            JsonArray list => new JsonArray([.. Mixed(list, random).Select(n => Shuffle(n, random))]),
            _ => node?.DeepClone(),
        };

    private static T[] Mixed<T>(IEnumerable<T> rows, Random random)
    {
        T[] mixed = [.. rows];
        random.Shuffle(mixed);
        return mixed;
    }

    private static string ExamplePath() => Path.Combine(RepositoryRoot.Path, "examples", "visit.json");
}
