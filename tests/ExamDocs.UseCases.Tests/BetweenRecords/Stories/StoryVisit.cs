using System.Text.Json.Nodes;

namespace ExamDocs.UseCases.Tests.BetweenRecords.Stories;

/// <summary>One visit of a story, as it is typed.</summary>
internal sealed class StoryVisit
{
    private readonly JsonObject _record;
    private readonly string _day;

    public StoryVisit(string reference, string day, string employer)
    {
        _day = day;
        _record = new JsonObject
        {
            ["format"] = "examdocs/1",
            ["visit"] = new JsonObject
            {
                ["reference"] = reference,
                ["regime"] = "gb-loler",
                ["employer"] = Party(employer),
                ["premises"] = Party("The yard"),
                ["enforcingAuthority"] = Party("An authority"),
                ["examinedOn"] = day,
                ["reportedOn"] = day,
            },
            ["people"] = new JsonArray(
                new JsonObject
                {
                    ["id"] = "ex1",
                    ["name"] = "Ada Fenn",
                    ["address"] = "2 Some Lane",
                    ["qualifications"] = "Guild examiner",
                    ["selfEmployed"] = true,
                }
            ),
            ["items"] = new JsonArray(),
            ["limits"] = new JsonArray(),
            ["examinations"] = new JsonArray(),
        };
    }

    public string Json => _record.ToJsonString();

    public string Reference => (string)_record["visit"]!["reference"]!;

    public StoryVisit Bridge(string id, string? serial, Func<StoryItem, StoryItem>? more = null) => Item("rope-bridge", id, serial, more);

    public StoryVisit Harness(string id, string? serial, Func<StoryItem, StoryItem>? more = null) => Item("harness", id, serial, more);

    public StoryVisit Connector(string id, string? serial, Func<StoryItem, StoryItem>? more = null) => Item("connector", id, serial, more);

    public StoryVisit HiredFrom(string owner) => With(() => _record["visit"]!["hiredFrom"] = Party(owner));

    public StoryVisit By(string examiner) => With(() => _record["people"]![0]!["name"] = examiner);

    /// <summary>Released on the day of the visit by its examiner, on grounds that are a sentence, unless something else is said.</summary>
    public StoryVisit Released(
        string item,
        string? withdrawnOn,
        string? because = null,
        string? on = null,
        string grounds = "looked at again in daylight",
        string by = "ex1",
        string? document = null
    ) =>
        Row(
            "releases",
            new()
            {
                ["item"] = item,
                ["by"] = by,
                ["on"] = on ?? _day,
                ["withdrawnOn"] = withdrawnOn,
                ["because"] = because,
                ["grounds"] = grounds,
                ["document"] = document,
            }
        );

    public StoryVisit Repaired(string item, string? on = null) =>
        Row(
            "remedies",
            new()
            {
                ["item"] = item,
                ["what"] = "renewed the gate",
                ["doneBy"] = "Fennick Works",
                ["doneOn"] = on ?? _day,
                ["evidence"] = "their note",
            }
        );

    public StoryVisit Renewed(string whole, string? removed, string? fitted, string? on = null) =>
        Row(
            "renewals",
            new()
            {
                ["item"] = whole,
                ["removedPart"] = removed,
                ["fittedPart"] = fitted,
                ["reason"] = "worn",
                ["doneBy"] = "ex1",
                ["supervisedBy"] = "ex1",
                ["doneOn"] = on ?? _day,
            }
        );

    public StoryVisit Disposed(string item, string action, string? on = null) =>
        Row(
            "disposals",
            new()
            {
                ["item"] = item,
                ["action"] = action,
                ["by"] = "Ada Fenn",
                ["on"] = on ?? _day,
            }
        );

    private static JsonObject Party(string name) => new() { ["name"] = name, ["address"] = "1 Some Lane, Norshire" };

    private StoryVisit Item(string category, string id, string? serial, Func<StoryItem, StoryItem>? more)
    {
        var item = new StoryItem(id, category, serial, _day);
        (more is null ? item : more(item)).AddTo(_record);
        return this;
    }

    private StoryVisit Row(string list, JsonObject row) =>
        With(() =>
        {
            if (_record[list] is null)
                _record[list] = new JsonArray();
            _record[list]!.AsArray().Add(row);
        });

    private StoryVisit With(Action change)
    {
        change();
        return this;
    }
}
