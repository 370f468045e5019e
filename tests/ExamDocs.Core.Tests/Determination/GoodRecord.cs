using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>
/// Complete, faultless records of invented kit, one examination per item with every criterion clear. Tests plant one
/// thing at a time in them. The day examined is 11 May 2026; every limit ends years later.
/// </summary>
internal static class GoodRecord
{
    public const string Id = "IT-1";

    public const string ExaminedOn = "2026-05-11";

    /// <summary>Six months from the day examined (SI 1998/2307 reg 9(3)(a)(i)).</summary>
    public const string NextBy = "2026-11-11";

    public static JsonObject For(string category) => Of((Id, category, null));

    /// <summary>A harness with a bridge on it, and a ring on the bridge.</summary>
    public static JsonObject Assembly() => Of(("A", "harness", null), ("B", "rope-bridge", "A"), ("C", "swivel-ring", "B"));

    public static JsonObject Of(params (string Id, string Category, string? FittedTo)[] items) =>
        new()
        {
            ["format"] = "examdocs/1",
            ["visit"] = JsonNode.Parse(Visit),
            ["people"] = JsonNode.Parse(People),
            ["items"] = new JsonArray([.. items.Select(i => Item(i.Id, i.Category, i.FittedTo))]),
            ["limits"] = new JsonArray([.. items.Select(i => Limits(i.Id))]),
            ["examinations"] = new JsonArray([.. items.Select(i => Examination(i.Id, i.Category))]),
        };

    public static JsonObject Examination(string id, string category, string on = ExaminedOn)
    {
        var examination = JsonNode
            .Parse(
                $$"""
                {"item":"{{id}}","examiner":"ex1","author":"ex1","authenticatedBy":"ex1","regime":"gb-loler",
                 "basis":"six-month","examinedOn":"{{on}}","conclusion":"fit"}
                """
            )!
            .AsObject();
        if (category is "helmet")
            examination["regime"] = "gb-wah";
        examination["observations"] = new JsonArray([
            .. Catalogue.Find(category)!.Criteria.Select(c => new JsonObject { ["criterion"] = c.Id, ["state"] = "clear" }),
        ]);
        return examination;
    }

    private static JsonObject Item(string id, string category, string? fittedTo)
    {
        var item = JsonNode
            .Parse(
                $$"""
                {"id":"{{id}}","category":"{{category}}","description":"An invented thing","maker":"Ferndell",
                 "model":"M-{{id}}","partNumber":"PN-{{id}}","serial":"S-{{id}}","manufactured":"2024-02-01",
                 "purchased":"2024-03-01","firstUsed":"2024-05-20","safeWorkingLoad":{"value":150,"unit":"kg"},
                 "lastExamined":"2025-11-20","purpose":"lifts-persons",
                 "declaration":{"reference":"D-{{id}}","on":"2024-02-10"},"status":"in-use"}
                """
            )!
            .AsObject();
        if (category is "helmet")
            item["purpose"] = "fall-arrest-only";
        if (fittedTo is not null)
            item["fittedTo"] = fittedTo;
        return item;
    }

    private static JsonNode Limits(string id) =>
        JsonNode.Parse(
            $$"""
            {"maker":"Ferndell","model":"M-{{id}}","partNumber":"PN-{{id}}",
             "source":{"title":"Instructions for M-{{id}}","revision":"2","page":"7"},
             "maxUseYears":6,"maxStorageYears":2,"maxAgeYears":12}
            """
        )!;

    private const string Visit = """
        {"reference":"V-1","regime":"gb-loler",
         "employer":{"name":"Tallowmere Tree Care","address":"1 Nether Lane, Tallowmere"},
         "premises":{"name":"Tallowmere yard","address":"2 Nether Lane, Tallowmere"},
         "examinedOn":"2026-05-11","reportedOn":"2026-05-12"}
        """;

    private const string People = """
        [{"id":"ex1","name":"Odile Farrowby","address":"3 Quarry Rise, Tallowmere",
          "qualifications":"Examiner of climbing kit, 9 years","selfEmployed":true}]
        """;
}
