using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.RuleFiles;
using NodaTime;

namespace ExamDocs.Intake.Tests.RuleFiles;

/// <summary>What the user's own rules may say, on the examples of the regimes' page, and what is refused and how.</summary>
public sealed class RuleFileTests
{
    private static readonly string[] Blocks = [.. Page().Split("```json\n").Skip(1).Select(b => b.Split("```")[0])];

    private static JsonObject Regime => JsonNode.Parse(Blocks[0])!.AsObject();

    private static JsonObject Category => JsonNode.Parse(Blocks[1])!.AsObject();

    public static TheoryData<string> Regimes => [.. RegimeIndex.All.Select(r => r.Id)];

    public static TheoryData<string> Categories => [.. Catalogue.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Regimes))]
    public void What_is_built_in_keeps_to_the_published_schema_of_regimes(string id) =>
        Assert.Empty(
            RuleFile.Regime(File.ReadAllBytes(Path.Combine(Root(), "src", "ExamDocs.Core", "Regimes", "Data", $"{id}.json"))).Faults
        );

    [Theory]
    [MemberData(nameof(Categories))]
    public void What_is_built_in_keeps_to_the_published_schema_of_categories(string id) =>
        Assert.Empty(
            RuleFile.Category(File.ReadAllBytes(Path.Combine(Root(), "src", "ExamDocs.Core", "Criteria", "Data", $"{id}.json"))).Faults
        );

    [Fact]
    public void The_example_regime_of_the_page_is_read_with_its_dates()
    {
        var (regime, faults) = Read(Regime);
        Assert.Empty(faults);
        Assert.Empty(RuleAdditions.Against(regime!, KnownRules.BuiltIn));
        Assert.Equal(12, regime!.MonthsFor(null, new LocalDate(2025, 12, 31)));
        Assert.Equal(9, regime.MonthsFor(null, new LocalDate(2026, 1, 1)));
        Assert.True(regime.Asks("PAR005", new LocalDate(2026, 1, 1)));
    }

    [Fact]
    public void The_example_category_of_the_page_is_read()
    {
        var (category, faults) = RuleFile.Category(Bytes(Category));
        Assert.Empty(faults);
        Assert.Empty(RuleAdditions.Against(category!, KnownRules.BuiltIn));
        Assert.Equal(8, category!.Criteria.Count);
    }

    /// <summary>Where the slip is planted, what then stands there (null takes it out), the place named, words of the sentence.</summary>
    public static TheoryData<string, string?, string, string> Slips =>
        new()
        {
            { "/id", null, "/", "id" },
            { "/id", "\"Fenmark\"", "/id", "Type an id of small letters" },
            { "/months", "3", "/months", "take it out" },
            { "/intervals/0/entries/0/months", "0", "/intervals/0/entries/0/months", "from 1 to 120" },
            { "/intervals/0/entries/0/months", "\"12\"", "/intervals/0/entries/0/months", "from 1 to 120" },
            { "/intervals/0/entries/0/months", "1.5", "/intervals/0/entries/0/months", "from 1 to 120" },
            { "/intervals/0/entries/0/source", null, "/intervals/0/entries/0", "source" },
            { "/intervals/0/entries/0/confidence", "\"sure\"", "/intervals/0/entries/0/confidence", "unofficial-copy" },
            { "/intervals/0/from", "\"1 July 2019\"", "/intervals/0/from", "2026-05-11" },
            { "/intervals/0/from", "\"2019-02-30\"", "/intervals/0/from", "cannot be read" },
            { "/intervals/0/until", "\"2025-12-30\"", "/intervals", "do not follow one another" },
            { "/intervals/1/from", "null", "/intervals", "do not follow one another" },
            { "/intervals/1/entries/0/purposes", "[\"accessory\"]", "/intervals/1/entries", "no interval" },
            { "/intervals/1/entries/1/purposes/0", "\"climbing\"", "/intervals/1/entries/1/purposes/0", "lifts-persons" },
            { "/particulars/0/entries/0/checks/0", "\"PAR001\"", "/", "no rule that a regime can ask for" },
            { "/particulars/0/entries/0/checks/0", "\"PAR999\"", "/", "no rule that a regime can ask for" },
            { "/particulars/0/entries/0/severity", "\"note\"", "/particulars/0/entries/0/severity", "take it out" },
            { "/duties/0/entries/0/whom", "\"nobody\"", "/duties/0/entries/0/whom", "employer" },
            { "/retention/0/entries/0/years", "0", "/retention/0/entries/0/years", "1 to 100" },
            { "/name", "\"Fen\\u202Emark\"", "/name", "U+202E" },
            { "/name", "\"Fen\\nmark\"", "/name", "line break" },
        };

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_in_a_regime_is_refused_at_its_place_with_what_to_type(string at, string? holds, string place, string words)
    {
        var text = Regime;
        Plant(text, at, holds);
        var (regime, faults) = Read(text);
        Assert.Null(regime);
        Assert.Contains(faults, f => f.StartsWith($"{place}: ", StringComparison.Ordinal) && f.Contains(words, StringComparison.Ordinal));
    }

    /// <summary>What would let a user's category off something that every kit is asked.</summary>
    public static TheoryData<string, string?, string> Softer =>
        new()
        {
            { "/criteria/1/required", "false", "must be required" },
            { "/criteria/2/neverReleasable", "false", "never releasable" },
            { "/criteria/2/class", "\"judged\"", "never releasable" },
            { "/criteria/3/allowsNotApplicable", "true", "neither noted nor not-applicable" },
            { "/criteria/3/allowsNoted", "true", "neither noted nor not-applicable" },
            { "/criteria/2/id", "\"saw\"", "saw-contact" },
            { "/criteria/0/id", "\"name\"", "identity" },
            { "/criteria/1/allowsNoSign", "true", "cannot be asked" },
            { "/criteria/1/neverReleasable", "true", "take neverReleasable out" },
            { "/criteria/5/id", "\"cuts\"", "stands there twice" },
            { "/criteria/4/class", "\"advisory\"", "order is wrong" },
            { "/criteria/1/defectIsFine", "true", "take it out" },
            { "/criteria/7", null, "criteria" },
            { "/ages", "false", "take it out" },
            { "/plural", "\"Throw/lines\"", "Throw lines" },
        };

    [Theory]
    [MemberData(nameof(Softer))]
    public void A_category_cannot_be_softer_than_what_every_kit_is_asked(string at, string? holds, string words)
    {
        var text = Category;
        Plant(text, at, holds);
        var (category, faults) = RuleFile.Category(Bytes(text));
        Assert.Null(category);
        Assert.Contains(faults, f => f.Contains(words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("gb-loler")]
    [InlineData("gb-l0ler")]
    [InlineData("gb-1oler")]
    [InlineData("gbloler")]
    [InlineData("g-b-loier")]
    [InlineData("fr")]
    public void An_id_that_is_there_or_looks_like_one_is_refused(string id)
    {
        var text = Regime;
        text["id"] = id;
        Assert.Contains(
            "type another id",
            Assert.Single(RuleAdditions.Against(Read(text).Value!, KnownRules.BuiltIn)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("id", "harness", "type another id")]
    [InlineData("id", "harn-ess", "type another id")]
    [InlineData("plural", "Harnesses", "type another name")]
    [InlineData("plural", "People", "type another name")]
    [InlineData("plural", "Other items", "type another name")]
    public void A_category_cannot_take_the_place_of_another_or_of_a_sheet(string member, string holds, string words)
    {
        var text = Category;
        text[member] = holds;
        var faults = RuleAdditions.Against(RuleFile.Category(Bytes(text)).Value!, KnownRules.BuiltIn);
        Assert.Contains(words, Assert.Single(faults), StringComparison.Ordinal);
    }

    [Fact]
    public void A_criterion_cannot_take_the_place_of_a_column()
    {
        var text = Category;
        text["criteria"]![1]!["id"] = "conclusion";
        Assert.Contains(
            "give the criterion another id",
            Assert.Single(RuleAdditions.Against(RuleFile.Category(Bytes(text)).Value!, KnownRules.BuiltIn)),
            StringComparison.Ordinal
        );
    }

    public static TheoryData<string, string> Hostile =>
        new()
        {
            { "", "not valid JSON" },
            { "{", "not valid JSON at line 1" },
            { "[]", "Type one regime" },
            { "null", "Type one regime" },
            { "\"gb-loler\"", "Type one regime" },
            { new string('[', 100_000), "not valid JSON" },
            { string.Concat(Enumerable.Repeat("{\"id\":", 50)) + "1" + new string('}', 50), "not valid JSON" },
            { "{\"id\":\"aa\",\"id\":\"bb\"}", "stands there twice" },
            { "{\"name\":\"" + new string('x', RuleFile.MaxBytes) + "\"}", "larger than 256 KiB" },
            { "[" + string.Join(',', Enumerable.Repeat("1", 100_000)) + "]", "Type one regime" },
            { "{\"checks\":[" + string.Join(',', Enumerable.Repeat("1", 100_000)) + "]}", "more faults" },
            { "\u0000\u0001\u0002", "not valid JSON" },
            { "{\"name\":\"Fen\\ud800\"}", "half of a character" },
        };

    [Theory]
    [MemberData(nameof(Hostile))]
    public void A_hostile_file_gets_a_short_clear_answer(string text, string words)
    {
        var (regime, faults) = RuleFile.Regime(Encoding.UTF8.GetBytes(text));
        Assert.Null(regime);
        Assert.InRange(faults.Count, 1, 11);
        Assert.Contains(faults, f => f.Contains(words, StringComparison.Ordinal));
    }

    private static (Regime? Value, IReadOnlyList<string> Faults) Read(JsonObject regime)
    {
        var (value, faults) = RuleFile.Regime(Bytes(regime));
        return (value, faults);
    }

    private static byte[] Bytes(JsonObject node) => Encoding.UTF8.GetBytes(node.ToJsonString());

    private static void Plant(JsonObject root, string at, string? holds)
    {
        var steps = at.Split('/', StringSplitOptions.RemoveEmptyEntries);
        var owner = steps[..^1].Aggregate((JsonNode)root, (node, step) => node is JsonArray list ? list[Index(step)]! : node[step]!);
        if (owner is JsonArray elements)
        {
            elements.RemoveAt(Index(steps[^1]));
            if (holds is not null)
                elements.Insert(Index(steps[^1]), JsonNode.Parse(holds));
        }
        else if (holds is null)
        {
            Assert.True(owner.AsObject().Remove(steps[^1]));
        }
        else
        {
            owner[steps[^1]] = JsonNode.Parse(holds);
        }
    }

    private static int Index(string step) => int.Parse(step, System.Globalization.CultureInfo.InvariantCulture);

    private static string Page() => File.ReadAllText(Path.Combine(Root(), "docs", "regimes.md")).ReplaceLineEndings("\n");

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ExamDocs.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("no ExamDocs.sln above the tests");
    }
}
