using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>Builds the record of a visit without a flaw.</summary>
internal static class Visits
{
    public static JsonObject Empty(string reference, DateOnly on, string employer, string? hiredFrom = null)
    {
        JsonObject visit = new()
        {
            ["reference"] = reference,
            ["regime"] = "gb-loler",
            ["employer"] = Flawless.Party(employer),
            ["premises"] = Flawless.Party("The yard"),
            ["enforcingAuthority"] = Flawless.Party("An authority"),
            ["examinedOn"] = Flawless.Text(on),
            ["reportedOn"] = Flawless.Text(on),
        };
        if (hiredFrom is not null)
        {
            visit["hiredFrom"] = Flawless.Party(hiredFrom);
        }

        return new JsonObject
        {
            ["format"] = "examdocs/1",
            ["visit"] = visit,
            ["people"] = new JsonArray(
                new JsonObject
                {
                    ["id"] = "ex1",
                    ["name"] = "Ada Fenn",
                    ["address"] = "2 Some Lane, Norshire",
                    ["qualifications"] = "Guild examiner",
                    ["selfEmployed"] = true,
                }
            ),
            ["items"] = new JsonArray(),
            ["limits"] = new JsonArray(),
            ["examinations"] = new JsonArray(),
        };
    }

    /// <summary>Adds a row with its limits and, where it is examined, an examination that finds it clear.</summary>
    public static JsonObject? Add(JsonObject record, JsonObject row, bool isExamined, Dice dice)
    {
        record["items"]!.AsArray().Add(row);
        AddLimits(record["limits"]!.AsArray(), row);
        if (!isExamined)
        {
            return null;
        }

        var examination = Flawless.Examination((string)row["id"]!, Kinds.All[(string)row["category"]!], dice);
        if ((string?)row["category"] == "helmet")
        {
            examination["regime"] = "gb-wah";
        }

        record["examinations"]!.AsArray().Add(examination);
        return examination;
    }

    public static void Answer(JsonObject examination, string criterion, string state)
    {
        foreach (
            var answer in examination["observations"]!.AsArray().Select(o => o!.AsObject()).Where(o => (string?)o["criterion"] == criterion)
        )
        {
            (answer["state"], answer["note"]) = (state, "seen");
        }
    }

    public static string Day(JsonObject record) => (string)record["visit"]!["examinedOn"]!;

    private static void AddLimits(JsonArray limits, JsonObject row)
    {
        if (
            (string?)row["maker"] is not { Length: > 0 } maker
            || limits.Any(l => (string?)l!["maker"] == maker && (string?)l["model"] == (string?)row["model"])
        )
        {
            return;
        }

        JsonObject limit = new()
        {
            ["maker"] = maker,
            ["model"] = (string)row["model"]!,
            ["maxAgeYears"] = 10,
            ["source"] = new JsonObject
            {
                ["title"] = "Instructions",
                ["revision"] = "1",
                ["page"] = "2",
            },
        };
        if ((string?)row["category"] == "harness")
        {
            limit["permittedParts"] = new JsonArray("SP-11", "SP-12-4", "K10");
        }

        limits.Add(limit);
    }
}
