using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>A small invented record in which no rule finds a fault, and the checks over a copy of it.</summary>
internal static class GoodRecord
{
    /// <summary>Pointers into the record, named by what is there.</summary>
    public const int Harness = 0,
        Bridge = 1,
        Connector = 2,
        Helmet = 3,
        EarlierOfConnector = 4;

    public static readonly LocalDate AsOf = new(2026, 6, 1);

    public static JsonNode Json()
    {
        var record = JsonNode.Parse(Text)!;
        foreach (
            var (index, category) in new[]
            {
                (Harness, "harness"),
                (Bridge, "rope-bridge"),
                (Connector, "connector"),
                (Helmet, "helmet"),
                (EarlierOfConnector, "connector"),
            }
        )
            Answer(record["examinations"]![index]!.AsObject(), category);
        var abrasion = record["examinations"]![Harness]!["observations"]!.AsArray().Single(o => (string?)o!["criterion"] is "abrasion")!;
        abrasion["state"] = "defect";
        abrasion["note"] = "Face of the left leg strap worn over 30 mm";
        return record;
    }

    public static IReadOnlyList<Finding> Check(JsonNode record, History? history = null, KnownRules? rules = null)
    {
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(record.ToJsonString()), "record.json");
        return Determine.Visit(read.Record!, read.Findings, history ?? History.None, AsOf, rules).Findings;
    }

    /// <summary>Every required criterion of the category clear.</summary>
    private static void Answer(JsonObject examination, string category) =>
        examination["observations"] = new JsonArray([
            .. Catalogue
                .Find(category)!
                .Criteria.Where(c => c.Required)
                .Select(c => new JsonObject { ["criterion"] = c.Id, ["state"] = "clear" }),
        ]);

    private const string Text = """
        {
          "format": "examdocs/1",
          "visit": {
            "reference": "V-1", "regime": "gb-loler",
            "employer": { "name": "Alderfen Tree Care", "address": "1 Alder Row, Fenmarsh" },
            "premises": { "name": "Fenmarsh yard", "address": "2 Alder Row, Fenmarsh" },
            "examinedOn": "2026-05-11", "reportedOn": "2026-05-12" },
          "people": [
            { "id": "ex1", "name": "Ida Brackenfold", "address": "3 Alder Row, Fenmarsh", "qualifications": "examiner since 2010", "selfEmployed": true },
            { "id": "ex2", "name": "Jon Sallowby", "address": "4 Alder Row, Fenmarsh", "qualifications": "examiner since 2015", "selfEmployed": false,
              "employer": { "name": "Sallowby Inspections", "address": "5 Alder Row, Fenmarsh" } } ],
          "items": [
            { "id": "HAR-1", "category": "harness", "description": "Harness", "maker": "Fenwright", "model": "F1", "serial": "A-1",
              "manufactured": "2024-02", "purchased": "2024-04-02", "firstUsed": "2024-05-20", "lastExamined": "2025-11-12", "purpose": "lifts-persons",
              "safeWorkingLoad": { "value": 140, "unit": "kg" }, "declaration": { "reference": "D-1", "on": "2024-03-01" }, "status": "in-use" },
            { "id": "BRG-1", "category": "rope-bridge", "description": "Rope bridge", "maker": "Fenwright", "model": "B1", "partNumber": "FB-38", "serial": "B-1",
              "manufactured": "2025-02", "purchased": "2025-03-03", "firstUsed": "2025-11-12", "lastExamined": "2025-11-12", "purpose": "lifts-persons",
              "safeWorkingLoad": { "value": 1, "unit": "persons" }, "fittedTo": "HAR-1" },
            { "id": "CON-1", "category": "connector", "description": "Connector", "maker": "Fenwright", "model": "C1", "serial": "C-1", "ownersMark": "AT 7",
              "manufactured": "2023", "firstUsed": "2024-01", "purpose": "lifts-persons",
              "safeWorkingLoad": { "value": 1, "unit": "persons" } },
            { "id": "HEL-1", "category": "helmet", "description": "Helmet", "maker": "Fenwright", "model": "K1", "serial": "K-1",
              "manufactured": "2024-10", "firstUsed": "2025-02-03", "lastExamined": "2025-12-01", "purpose": "fall-arrest-only" } ],
          "limits": [
            { "maker": "Fenwright", "model": "F1", "source": { "title": "F1 instructions", "revision": "2", "page": "9" }, "maxUseYears": 10, "maxAgeYears": 12 },
            { "maker": "Fenwright", "model": "B1", "partNumber": "FB-38", "source": { "title": "B1 instructions", "revision": "1", "page": "4" }, "maxUseYears": 3,
              "nominalDiameterMm": 11.0, "diameterTolerancePercent": 10 },
            { "maker": "Fenwright", "model": "C1", "source": { "title": "C1 instructions", "revision": "5", "page": "2" }, "noLimit": true },
            { "maker": "Fenwright", "model": "K1", "source": { "title": "K1 instructions", "revision": "3", "page": "7" }, "maxAgeYears": 5 } ],
          "examinations": [
            { "item": "HAR-1", "examiner": "ex1", "basis": "six-month", "conclusion": "fit",
              "tests": [ { "description": "Suspended with a climber of 82 kg", "result": "held, nothing slipped" } ],
              "defects": [ { "criterion": "abrasion", "part": "left leg strap", "description": "face worn", "danger": "later", "becomesDangerOn": "2026-09-01",
                "remedy": "renew the strap", "imminentRisk": false, "notified": { "whom": "the yard foreman", "how": "by word of mouth", "on": "2026-05-11" } } ] },
            { "item": "BRG-1", "examiner": "ex1", "basis": "six-month", "conclusion": "fit",
              "diameters": [ { "positionMm": 50, "readingsMm": [11.0, 10.9] }, { "positionMm": 190, "readingsMm": [10.9, 10.9] } ] },
            { "item": "CON-1", "examiner": "ex1", "basis": "six-month", "conclusion": "fit" },
            { "item": "HEL-1", "examiner": "ex2", "regime": "gb-wah", "basis": "six-month", "conclusion": "fit" },
            { "item": "CON-1", "examiner": "ex2", "basis": "six-month", "conclusion": "withdraw", "examinedOn": "2025-11-20" } ],
          "renewals": [ { "item": "HAR-1", "fittedPart": "BRG-1", "reason": "worn", "doneBy": "ex2", "supervisedBy": "ex2", "doneOn": "2025-11-12" } ],
          "remedies": [ { "item": "CON-1", "what": "gate spring renewed", "doneBy": "Fenwright", "doneOn": "2026-01-09", "evidence": "invoice" } ],
          "releases": [ { "item": "CON-1", "by": "ex1", "on": "2026-05-11", "grounds": "spring renewed; gate closes by itself" } ],
          "disposals": [ { "item": "CON-1", "action": "quarantined", "by": "Jon Sallowby", "on": "2025-11-20" } ]
        }
        """;
}
