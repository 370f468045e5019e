using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;

namespace ExamDocs.UseCases.Tests.BetweenRecords.Stories;

/// <summary>One item of a story's visit: looked at and found clear, unless something else is said of it.</summary>
internal sealed class StoryItem
{
    private readonly JsonObject _row;
    private readonly JsonObject _examination;
    private readonly string _day;
    private bool _isExamined = true;

    public StoryItem(string id, string category, string? serial, string day)
    {
        _day = day;
        _row = new JsonObject
        {
            ["id"] = id,
            ["category"] = category,
            ["description"] = "A " + category,
            ["maker"] = "Fennick Works",
            ["model"] = "Model " + category,
            ["partNumber"] = "SP-11",
            ["serial"] = serial,
            ["manufactured"] = "2024-02",
            ["purchased"] = "2024-04",
            ["firstUsed"] = "2024-05-20",
            ["safeWorkingLoad"] = new JsonObject { ["value"] = 150, ["unit"] = "kg" },
            ["lastExamined"] = "2025-11-10",
            ["purpose"] = "lifts-persons",
            ["status"] = "in-use",
        };
        _examination = new JsonObject
        {
            ["item"] = id,
            ["examiner"] = "ex1",
            ["basis"] = "six-month",
            ["conclusion"] = "fit",
            ["observations"] = new JsonArray([
                .. Catalogue
                    .Find(category)!
                    .Criteria.Where(c => c.Required)
                    .Select(c => new JsonObject { ["criterion"] = c.Id, ["state"] = "clear" }),
            ]),
        };
    }

    public StoryItem Mark(string mark) => Put("ownersMark", mark);

    public StoryItem Maker(string maker) => Put("maker", maker);

    public StoryItem PartNumber(string? number) => Put("partNumber", number);

    public StoryItem Made(string date) => Put("manufactured", date);

    public StoryItem On(string whole) => Put("fittedTo", whole);

    public StoryItem Formerly(string id) => Put("formerly", id);

    public StoryItem Not(string id, string? because)
    {
        _row["notTheSameAs"] = new JsonArray(new JsonObject { ["id"] = id, ["because"] = because });
        return this;
    }

    /// <summary>A cut, which ends its service.</summary>
    public StoryItem Cut() =>
        Found(
            _row["category"]!.ToString() switch
            {
                "rope-bridge" => "cover-cut",
                "harness" => "webbing-cut",
                "connector" => "cracks",
                _ => "shell",
            },
            "defect"
        );

    public StoryItem SawContact() => Found("saw-contact", "defect");

    /// <summary>In doubt, so out of service.</summary>
    public StoryItem Doubt() => Found("identity", "doubt");

    /// <summary>The examiner's own word, with nothing found.</summary>
    public StoryItem Concluded()
    {
        _examination["conclusion"] = "withdraw";
        return this;
    }

    /// <summary>The examiner forgot an answer.</summary>
    public StoryItem Forgotten()
    {
        _examination["observations"]!.AsArray().RemoveAt(0);
        return this;
    }

    /// <summary>A defect that becomes a danger on a day to come.</summary>
    public StoryItem LaterDefect(string dangerOn)
    {
        Found("marking", "defect").Concluded();
        _examination["conclusion"] = "fit";
        _examination["defects"] = new JsonArray(
            new JsonObject
            {
                ["criterion"] = "marking",
                ["part"] = "the label",
                ["description"] = "wearing off",
                ["danger"] = "later",
                ["becomesDangerOn"] = dangerOn,
                ["remedy"] = "mark it anew",
                ["notified"] = new JsonObject
                {
                    ["whom"] = "The keeper",
                    ["how"] = "by word",
                    ["on"] = _day,
                },
            }
        );
        return this;
    }

    public StoryItem NextBy(string day)
    {
        _examination["nextBy"] = day;
        return this;
    }

    public StoryItem NotLookedAt(string status = "in-use")
    {
        _isExamined = false;
        return Put("status", status);
    }

    public StoryItem Destroyed() => NotLookedAt("destroyed");

    public void AddTo(JsonObject record)
    {
        record["items"]!.AsArray().Add(_row);
        AddLimits(record["limits"]!.AsArray());
        if (_isExamined)
            record["examinations"]!.AsArray().Add(_examination);
    }

    private StoryItem Found(string criterion, string state)
    {
        var answer = _examination["observations"]!.AsArray().Single(o => (string?)o!["criterion"] == criterion)!;
        (answer["state"], answer["note"]) = (state, "seen");
        return Concluded();
    }

    private StoryItem Put(string member, string? value)
    {
        _row[member] = value;
        return this;
    }

    private void AddLimits(JsonArray limits)
    {
        if (limits.Any(l => (string?)l!["maker"] == (string?)_row["maker"] && (string?)l["model"] == (string?)_row["model"]))
            return;
        limits.Add(
            new JsonObject
            {
                ["maker"] = (string?)_row["maker"],
                ["model"] = (string?)_row["model"],
                ["maxAgeYears"] = 10,
                ["permittedParts"] = (string?)_row["category"] is "harness" ? new JsonArray("SP-11", "SP-11-B") : null,
                ["source"] = new JsonObject
                {
                    ["title"] = "Instructions",
                    ["revision"] = "3",
                    ["page"] = "12",
                },
            }
        );
    }
}
