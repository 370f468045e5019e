using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>A piece of kit as it truly is, whatever is written of it.</summary>
internal sealed class Thing
{
    public required string Category { get; init; }

    public required string Owner { get; set; }

    public required string Id { get; set; }

    /// <summary>Ids it bore before.</summary>
    public List<string> Formerly { get; } = [];

    public required string Maker { get; init; }

    public required string PartNumber { get; init; }

    public string? Serial { get; init; }

    public string? Mark { get; set; }

    public required string Made { get; init; }

    /// <summary>Whole days, in the order in which it was bought, used and last examined before the first visit.</summary>
    public (string Bought, string Used, string? Examined) Since { get; init; } = ("2023", "2023-02-01", "2023-08-01");

    public Thing? On { get; set; }

    /// <summary>Some record has it.</summary>
    public bool IsRecorded { get; set; }

    /// <summary>The records in which its examiner withdrew it.</summary>
    public List<(string Day, string? Label)> Withdrawn { get; } = [];

    public static Thing Drawn(Dice dice, string owner)
    {
        var category = dice.One("rope-bridge", "rope-bridge", "harness", "harness", "connector", "helmet");
        var id =
            (
                category switch
                {
                    "rope-bridge" => "RB-",
                    "harness" => "H-",
                    "connector" => "C-1-",
                    _ => "M ",
                }
            ) + dice.One("1", "10", "2", "014");
        var hasSerial = dice.Chance(85);
        return new Thing
        {
            Category = category,
            Owner = owner,
            Id = id,
            Maker = dice.One("Fennick Works Ltd", "Osk and Lund"),
            PartNumber = dice.One("SP-11", "SP-12-4", "K10"),
            Serial = hasSerial ? dice.One("Q100", "Q101", "A 55-2", "IO77", "7") : null,
            Mark = hasSerial && dice.Chance(50) ? null : "OM-" + dice.One("1", "20", "31"),
            Made = dice.One("2022-03", "2022-03-09", "2022", "2021-11", "2022-08"),
        };
    }

    /// <summary>Its row, as typed by somebody careful.</summary>
    public JsonObject Row()
    {
        JsonObject row = new()
        {
            ["id"] = Id,
            ["category"] = Category,
            ["description"] = "Some kit",
            ["maker"] = Maker,
            ["model"] = "Model " + Category,
            ["partNumber"] = PartNumber,
            ["manufactured"] = Made,
            ["purchased"] = Since.Bought,
            ["firstUsed"] = Since.Used,
            ["safeWorkingLoad"] = new JsonObject { ["value"] = 140, ["unit"] = "kg" },
            ["lastExamined"] = Since.Examined,
            ["status"] = "in-use",
            ["purpose"] = Category == "helmet" ? "fall-arrest-only" : "lifts-persons",
        };
        foreach (var (member, value) in new[] { ("serial", Serial), ("ownersMark", Mark) })
        {
            if (value is not null)
            {
                row[member] = value;
            }
        }

        return row;
    }
}
