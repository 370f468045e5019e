using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>Another version of a visit.</summary>
internal static class Correcting
{
    public static JsonObject Version(JsonObject old, Dice dice)
    {
        var record = old.DeepClone().AsObject();
        var items = record["items"]!.AsArray();
        record["visit"]!["premises"]!["name"] = "The yard, corrected " + dice.Below(1000);
        switch (dice.Below(5))
        {
            case 0 or 1:
                Clear(record);
                break;
            case 2:
                var examination = record["examinations"]!.AsArray().Select(e => e!.AsObject()).LastOrDefault();
                examination?.Remove("defects");
                if (examination is not null)
                {
                    examination["conclusion"] = "withdraw";
                }

                break;
            case 3 when items.Count > 1:
                LeaveOut(record, (string)items[0]!["id"]!);
                break;
            default:
                items[0]!["serial"] = dice.One("Q100", "Q101", "S-9");
                break;
        }

        return record;
    }

    private static void Clear(JsonObject record)
    {
        foreach (var examination in record["examinations"]!.AsArray().Select(e => e!.AsObject()))
        {
            examination.Remove("defects");
            examination["conclusion"] = "fit";
            foreach (var answer in examination["observations"]!.AsArray())
            {
                answer!["state"] = "clear";
            }
        }
    }

    private static void LeaveOut(JsonObject record, string id)
    {
        foreach (
            var (list, key) in new[]
            {
                ("items", "id"),
                ("examinations", "item"),
                ("releases", "item"),
                ("remedies", "item"),
                ("disposals", "item"),
                ("renewals", "item"),
            }
        )
        {
            foreach (var row in (record[list] as JsonArray ?? []).Where(row => (string?)row![key] == id).ToList())
            {
                record[list]!.AsArray().Remove(row);
            }
        }
    }
}
