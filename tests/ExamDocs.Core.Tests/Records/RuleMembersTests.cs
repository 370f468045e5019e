using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Tests.Records;

/// <summary>
/// Categories and regimes are read as they are written: no member is passed over, none gets another value, and what is not as it should be
/// is refused with its place.
/// </summary>
public sealed class RuleMembersTests
{
    public static TheoryData<string> Files => [.. typeof(Catalogue).Assembly.GetManifestResourceNames().Where(IsOfRules)];

    [Fact]
    public void Every_member_is_read()
    {
        var (category, regime) = (Written(FullRules.Category), Written(FullRules.Regime));
        Assert.Equal(category.ToJsonString(), Written(CategoryData.Read(Element(category))).ToJsonString());
        Assert.Equal(regime.ToJsonString(), Written(RegimeData.Read(Element(regime))).ToJsonString());

        // A member that the data above leave at its usual value could be passed over, and nobody would see it.
        Assert.All([.. Values(category), .. Values(regime)], v =>
            Assert.True(
                v is JsonValue && (v.GetValueKind() is not JsonValueKind.False || v.GetPropertyName() is "required"),
                v?.GetPath() ?? "a member is null"
            )
        );
    }

    /// <summary>Against the library's own reading, which knows the types by reflection.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void What_is_built_in_is_read_as_the_library_reads_it(string name)
    {
        using var stream = typeof(Catalogue).Assembly.GetManifestResourceStream(name)!;
        var json = JsonNode.Parse(stream)!.AsObject();
        var (read, again) = name.StartsWith("criteria/", StringComparison.Ordinal)
            ? (Written(CategoryData.Read(Element(json))), Written(json.Deserialize<Category>(RuleJson.Options)!))
            : (Written(RegimeData.Read(Element(json))), Written(json.Deserialize<Regime>(RuleJson.Options)!));
        Assert.Equal(again.ToJsonString(), read.ToJsonString());
    }

    [Fact]
    public void What_is_left_out_has_its_usual_value()
    {
        var category = Written(FullRules.Category);
        foreach (var name in new[] { "required", "allowsNoted", "allowsNotApplicable", "allowsNoSign", "neverReleasable" })
            category["criteria"]![0]!.AsObject().Remove(name);

        var criterion = CategoryData.Read(Element(category)).Criteria[0];

        Assert.True(criterion.Required);
        Assert.False(criterion.AllowsNoted || criterion.AllowsNotApplicable || criterion.AllowsNoSign || criterion.NeverReleasable);
    }

    [Theory]
    [InlineData("\"required\":false", "\"required\":\"no\"", "$.criteria[0].required: true or false is wanted")]
    [InlineData("\"required\":false", "\"required\":null", "$.criteria[0].required: a value is wanted")]
    [InlineData("\"required\":false", "\"requird\":false", "$.criteria[0].requird: there is no such member")]
    [InlineData("\"required\":false", "\"Required\":false", "$.criteria[0].Required: there is no such member")]
    [InlineData("\"class\":\"advisory\",", "", "$.criteria[0].class: the member is missing")]
    [InlineData("\"advisory\"", "\"2\"", "$.criteria[0].class: '2' is none of the words")]
    [InlineData("\"advisory\"", "\"Advisory\"", "$.criteria[0].class: 'Advisory' is none of the words")]
    [InlineData("\"advisory\"", "\"decisive,judged\"", "$.criteria[0].class: 'decisive,judged' is none of the words")]
    [InlineData("\"read\"", "\"re-ad\"", "$.criteria[0].means[1]: 're-ad' is none of the words")]
    [InlineData("[\"feel\",\"read\"]", "\"feel\"", "$.criteria[0].means: a list is wanted, in brackets")]
    [InlineData("\"wear\"", "7", "$.criteria[0].id: a text is wanted")]
    [InlineData("\"wear\"", "null", "$.criteria[0].id: a value is wanted")]
    [InlineData("\"criteria\":[", "\"criteria\":[7,", "$.criteria[0]: an object is wanted, in braces")]
    public void A_category_that_is_not_as_it_should_be_is_refused(string part, string instead, string said) =>
        AssertRefused(Written(FullRules.Category), part, instead, said, json => CategoryData.Read(json));

    [Theory]
    [InlineData("\"months\":3", "\"months\":3.5", "$.intervals[0].entries[0].months: a whole number is wanted")]
    [InlineData("\"2020-01-31\"", "\"31.1.2020\"", "$.laws[0].from: a date is written year-month-day, for example 2026-05-11")]
    [InlineData("\"less-than\"", "null", "$.intervals[0].entries[0].bound: a value is wanted")]
    [InlineData("[\"PAR001\"]", "null", "$.particulars[0].entries[0].checks: a value is wanted")]
    [InlineData("[\"helmet\"]", "[null]", "$.handsOver[0].categories[0]: a text is wanted")]
    public void A_regime_that_is_not_as_it_should_be_is_refused(string part, string instead, string said) =>
        AssertRefused(Written(FullRules.Regime), part, instead, said, json => RegimeData.Read(json));

    [Fact]
    public void A_member_that_stands_there_twice_is_refused()
    {
        using var doubled = new MemoryStream(Encoding.UTF8.GetBytes("{\"id\":\"a\",\"id\":\"b\"}"));
        Assert.ThrowsAny<JsonException>(() => RuleMembers.Parse(doubled));
    }

    private static void AssertRefused(JsonObject sound, string part, string instead, string said, Action<JsonElement> read)
    {
        var json = sound.ToJsonString();
        Assert.Contains(part, json, StringComparison.Ordinal);
        using var changed = JsonDocument.Parse(json.Replace(part, instead, StringComparison.Ordinal));
        var refused = Assert.Throws<JsonException>(() => read(changed.RootElement));
        Assert.Equal((said, said.Split(':')[0]), (refused.Message, refused.Path));
    }

    /// <summary>As in a data file: what follows from other members is no part of it.</summary>
    private static JsonObject Written<T>(T value)
    {
        var json = JsonSerializer.SerializeToNode(value, RuleJson.Options)!.AsObject();
        json.Remove("ages");
        foreach (var law in json["laws"]?.AsArray().SelectMany(p => p!["entries"]!.AsArray()) ?? [])
            law!.AsObject().Remove("cited");
        return json;
    }

    private static JsonElement Element(JsonObject json) => JsonSerializer.SerializeToElement(json);

    /// <summary>Every value within; an empty list or object stands for itself.</summary>
    private static IEnumerable<JsonNode?> Values(JsonNode? node) =>
        node switch
        {
            JsonObject { Count: > 0 } members => members.SelectMany(m => Values(m.Value)),
            JsonArray { Count: > 0 } elements => elements.SelectMany(Values),
            _ => [node],
        };

    private static bool IsOfRules(string resource) =>
        resource.StartsWith("criteria/", StringComparison.Ordinal) || resource.StartsWith("regimes/", StringComparison.Ordinal);
}
