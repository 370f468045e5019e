using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>
/// One rope bridge with every member of the record format filled in, except those that exclude each other. It may be used until the
/// day before a dated defect becomes a danger.
/// </summary>
internal static class RichRecord
{
    public static JsonObject Make()
    {
        var record = GoodRecord.For("rope-bridge").Answer("cover-abrasion", "defect").Later("cover-abrasion", "2026-08-01");
        var visit = record["visit"]!.AsObject();
        visit["hiredFrom"] = JsonNode.Parse("""{"name":"Quernby Hire","address":"9 Mill Row, Quernby"}""");
        visit["enforcingAuthority"] = JsonNode.Parse("""{"name":"The authority","address":"1 Hall Street, Quernby"}""");
        record["people"]![0]!
            .AsObject()
            .With("selfEmployed", false)
            .With("employer", JsonNode.Parse("""{"name":"Farrowby Examiners","address":"3 Quarry Rise, Tallowmere"}"""));
        record
            .Item()
            .With("ownersMark", "OM-1")
            .With("neverUsed", false)
            .With("obsoleteOn", "2034-02-01")
            .With("markedStrength", JsonNode.Parse("""{"value":23,"unit":"kN"}"""))
            .With("standards", new JsonArray("EN 358"))
            .With("transferEvidence", "report 77 of 2025");
        record
            .Limits()
            .With("intervalMonths", 12)
            .With("nominalDiameterMm", 11.0m)
            .With("diameterTolerancePercent", 10)
            .With("minTailMm", 60)
            .With("retying", "maker")
            .With("permittedParts", new JsonArray("PN-C"));
        Examined(record.Exam());
        record.Station(50, 11.0m, 11.1m).Station(150, 10.9m, 11.0m);
        record.Row("remedies", """{"item":"IT-1","what":"washed","doneBy":"store","doneOn":"2026-05-01","evidence":"slip 4"}""");
        return record;
    }

    private static void Examined(JsonObject examination)
    {
        examination["basis"] = "scheme";
        examination["scheme"] = JsonNode.Parse("""{"reference":"S-1","author":"Odile Farrowby","months":6}""");
        examination["event"] = JsonNode.Parse("""{"what":"left in the rain","on":"2026-05-02"}""");
        examination["nextBy"] = "2026-10-11";
        examination["tests"] = JsonNode.Parse("""[{"description":"bend along its length","result":"even"}]""");
        examination["exposure"] = JsonNode.Parse("""{"hardware":"ring","ground":"sandy","userMassKg":82,"use":"daily"}""");
        examination["defects"]![0]!.AsObject().With("imminentRisk", false);
    }
}
