using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using Json.Schema;

namespace ExamDocs.Intake.Tests;

/// <summary>The published schema says what the reader accepts, and the example keeps to both.</summary>
public sealed class SchemaTests
{
    private static readonly string Root = RepositoryRoot();

    private static readonly string SchemaText = File.ReadAllText(Path.Combine(Root, "docs", "record.schema.json"));

    private static readonly byte[] Example = File.ReadAllBytes(Path.Combine(Root, "examples", "visit.json"));

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    [Fact]
    public void The_example_keeps_to_the_schema_and_reads_without_a_finding()
    {
        Assert.True(IsValid(JsonNode.Parse(Example)!));
        var read = JsonRecordReader.Read(Example, "visit.json");
        Assert.NotNull(read.Record);
        Assert.Empty(read.Findings);
        Assert.True(read.Record.Items.Count >= 48);
    }

    [Fact]
    public void The_small_record_in_the_format_s_page_keeps_to_the_schema_and_reads_without_a_finding()
    {
        var page = File.ReadAllText(Path.Combine(Root, "docs", "record-format.md"));
        var json = page.Split("```json")[1].Split("```")[0];
        Assert.True(IsValid(JsonNode.Parse(json)!));
        Assert.Empty(JsonRecordReader.Read(System.Text.Encoding.UTF8.GetBytes(json), "small.json").Findings);
    }

    /// <summary>Where the slip is planted, the member, and what it then holds (JSON; null takes the member out).</summary>
    public static TheoryData<string, string, string?> Slips =>
        new()
        {
            { "", "format", "\"examdocs/2\"" },
            { "", "visit", null },
            { "", "remarks", "\"none\"" },
            { "/visit", "employer", null },
            { "/visit", "weather", "\"dry\"" },
            { "/visit", "regime", "\"gb-loller\"" },
            { "/visit", "examinedOn", "\"11/05/2026\"" },
            { "/visit", "examinedOn", "\"2026-05\"" },
            { "/visit", "reportedOn", "\"2026-02-30\"" },
            { "/visit/employer", "address", "\"\"" },
            { "/people/0", "qualifications", "\" \"" },
            { "/people/1", "employer", null },
            { "/items/0", "id", null },
            { "/items/0", "category", "\"harnes\"" },
            { "/items/0", "serialNumber", "\"1\"" },
            { "/items/0", "manufactured", "\"2023-13\"" },
            { "/items/0", "manufactured", "2023" },
            { "/items/0", "neverUsed", "\"no\"" },
            { "/items/0", "purpose", "\"lifts persons\"" },
            { "/items/0/safeWorkingLoad", "unit", "\"lb\"" },
            { "/items/0/safeWorkingLoad", "value", "0" },
            { "/items/0/safeWorkingLoad", "notMarked", "true" },
            { "/limits/0", "maxUseYears", "6.5" },
            { "/limits/0", "maxUseYears", "101" },
            { "/limits/0", "intervalMonths", "0" },
            { "/limits/0", "source", null },
            { "/limits/0", "permittedParts", "\"WB-11-38\"" },
            { "/limits/0", "retying", "\"anyone\"" },
            { "/examinations/0", "observations", null },
            { "/examinations/0", "basis", "\"annual\"" },
            { "/examinations/0", "conclusion", "\"pass\"" },
            { "/examinations/0/observations/0", "state", "\"clera\"" },
            { "/examinations/0/observations/0", "state", "\"defect\"" },
            { "/examinations/0/diameters/0", "readingsMm", "[\"11.0\"]" },
            { "/items/0", "formerly", "7" },
            { "/items/0", "notTheSameAs", "[{\"id\": \"X\"}]" },
            { "/items/0", "notTheSameAs", "[{\"id\": \"X\", \"because\": \"serial differs\", \"why\": \"\"}]" },
            { "/releases/0", "because", "\"mended\"" },
            { "/releases/0", "withdrawnOn", "\"2025-11\"" },
            { "/renewals/0", "doneOn", "\"yesterday\"" },
            { "/disposals/0", "action", "\"lost\"" },
        };

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_planted_slip_breaks_the_schema(string parent, string member, string? holds)
    {
        var record = JsonNode.Parse(Example)!;
        var at = parent
            .Split('/', StringSplitOptions.RemoveEmptyEntries)
            .Aggregate(record, (node, step) => node is JsonArray list ? list[Index(step)]! : node[step]!)
            .AsObject();
        if (holds is null)
            Assert.True(at.Remove(member), $"{parent} holds no {member} to take out");
        else
            at[member] = JsonNode.Parse(holds);
        Assert.False(IsValid(record));
    }

    [Fact]
    public void An_empty_text_is_a_missing_value_wherever_the_value_may_be_missing()
    {
        var record = JsonNode.Parse(Example)!;
        var item = record["items"]![0]!.AsObject();
        foreach (var member in (string[])["maker", "serial", "manufactured", "firstUsed", "lastExamined", "purpose", "status"])
            item[member] = "";
        Assert.True(IsValid(record));
    }

    [Theory]
    [InlineData("2024")]
    [InlineData("2024-02")]
    [InlineData("2024-02-29")]
    public void A_date_of_manufacture_may_be_a_year_a_month_or_a_day(string typed)
    {
        var record = JsonNode.Parse(Example)!;
        record["items"]![0]!["manufactured"] = typed;
        Assert.True(IsValid(record));
    }

    [Fact]
    public void The_schema_allows_the_words_that_the_reader_knows()
    {
        using var schema = JsonDocument.Parse(SchemaText);
        var definitions = schema.RootElement.GetProperty("$defs");
        AssertWords(Catalogue.All.Select(c => c.Id), definitions, "item", "category");
        AssertWords(RegimeIndex.All.Select(r => r.Id), definitions, "visit", "regime");
        AssertWords(RegimeIndex.All.Select(r => r.Id), definitions, "examination", "regime");
        AssertWords(Words.Purposes.All, definitions, "item", "purpose");
        AssertWords(Words.Statuses.All, definitions, "item", "status");
        AssertWords(Words.Bases.All, definitions, "examination", "basis");
        AssertWords(Words.Conclusions.All, definitions, "examination", "conclusion");
        AssertWords(Words.States.All, definitions, "observation", "state");
        AssertWords(Words.Dangers.All, definitions, "defect", "danger");
        AssertWords(Words.Retyings.All, definitions, "limits", "retying");
        AssertWords(Words.DisposalActions.All, definitions, "disposal", "action");
        AssertWords(Words.ReleaseReasons.All, definitions, "release", "because");
    }

    private static void AssertWords(IEnumerable<string> known, JsonElement definitions, string part, string member) =>
        Assert.Equal(
            known.Order(StringComparer.Ordinal),
            definitions
                .GetProperty(part)
                .GetProperty("properties")
                .GetProperty(member)
                .GetProperty("enum")
                .EnumerateArray()
                .Select(w => w.GetString()!)
                .Where(w => w.Length > 0)
                .Order(StringComparer.Ordinal)
        );

    private static bool IsValid(JsonNode record) => Schema.Evaluate(JsonSerializer.SerializeToElement(record)).IsValid;

    private static int Index(string step) => int.Parse(step, System.Globalization.CultureInfo.InvariantCulture);

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ExamDocs.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("no ExamDocs.sln above the tests");
    }
}
