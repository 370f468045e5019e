using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Core;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.RuleFiles;

namespace ExamDocs.Intake.Tests.RuleFiles;

/// <summary>A user's category of metal needs no time limit: what tells that the kit is of textile is refused, with what to type.</summary>
public sealed class TextileCategoryTests
{
    [Theory]
    [InlineData("/id", "textile-link", "its name says 'textile'")]
    [InlineData("/name", "Soft shackle", "its name says 'Soft'")]
    [InlineData("/plural", "Webbing links", "its name says 'Webbing'")]
    [InlineData("/name", "Textilglied", "its name says 'Textilglied'")]
    [InlineData("/criteria/1/question", "Is every stitch whole?", "asks for 'stitch'")]
    [InlineData("/criteria/1/question", "Are all fibres whole?", "asks for 'fibres'")]
    [InlineData("/criteria/1/question", "Les coutures sont-elles entières ?", "asks for 'coutures'")]
    [InlineData("/criteria/1/id", "webbing-cut", "asks for 'webbing'")]
    [InlineData("/criteria/1/material", "textile", "is about a textile part")]
    public void Metal_that_is_textile_is_refused(string pointer, string value, string words)
    {
        var category = Link();
        Set(category, pointer, value);
        var (_, faults) = RuleFile.Category(Bytes(category));
        Assert.Contains(faults, f => f.Contains(words, StringComparison.Ordinal) && f.Contains("type textile", StringComparison.Ordinal));
    }

    /// <summary>Metal on which rope or webbing runs is metal all the same.</summary>
    [Theory]
    [InlineData("/name", "Rope clamp")]
    [InlineData("/name", "Chain sling")]
    [InlineData("/criteria/1/question", "Is every face that rope or webbing bears on free of burrs?")]
    [InlineData("/criteria/1/question", "Does the thread turn to its stop?")]
    [InlineData("/criteria/1/material", "mixed")]
    public void Metal_is_not(string pointer, string value)
    {
        var category = Link();
        Set(category, pointer, value);
        Assert.Empty(RuleFile.Category(Bytes(category)).Faults);
    }

    /// <summary>A kind that is built in is neither replaced nor imitated.</summary>
    [Theory]
    [InlineData("harness")]
    [InlineData("sling")]
    [InlineData("rope-bridge")]
    public void A_category_that_is_built_in_cannot_be_defined_again(string id)
    {
        var category = Link();
        category["id"] = id;
        var (read, faults) = RuleFile.Category(Bytes(category));
        Assert.Empty(faults);
        Assert.Contains(RuleAdditions.Against(read!, KnownRules.BuiltIn), f =>
            f.StartsWith("/id: there is a category", StringComparison.Ordinal)
        );
    }

    public static TheoryData<string> OfTextile =>
        [.. Catalogue.All.Where(c => c.Criteria.Any(k => k.Material is MaterialFamily.Textile)).Select(c => c.Id)];

    /// <summary>Nor one of textile made metal by a copy of its own file.</summary>
    [Theory]
    [MemberData(nameof(OfTextile))]
    public void A_copy_of_a_textile_category_cannot_call_itself_metal(string id)
    {
        var copy = Catalogue.Find(id)! with { Id = "own-kit", Name = "Own kit", Plural = "Own kit", Material = MaterialFamily.Metal };
        Assert.NotEmpty(SoundCategory.Faults(copy));
        var all = copy with { Criteria = [.. copy.Criteria.Select(c => c with { Material = MaterialFamily.Metal })] };
        Assert.NotEmpty(SoundCategory.Faults(all));
    }

    /// <summary>A ring's category under another name.</summary>
    private static JsonObject Link()
    {
        var category = JsonSerializer.SerializeToNode(Catalogue.Find("swivel-ring"), RuleJson.Options)!.AsObject();
        category.Remove("ages");
        (category["id"], category["name"], category["plural"]) = ("quick-link", "Quick link", "Quick links");
        return category;
    }

    private static void Set(JsonObject category, string pointer, string value)
    {
        var steps = pointer.Split('/', StringSplitOptions.RemoveEmptyEntries);
        JsonNode node = category;
        foreach (var step in steps[..^1])
            node = node is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : node[step]!;
        node[steps[^1]] = value;
    }

    private static byte[] Bytes(JsonObject json) => Encoding.UTF8.GetBytes(json.ToJsonString());
}
