using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Edges;

/// <summary>One flawless rope bridge that lifts persons, examined on a day; the next examination falls six months on.</summary>
internal static class EdgeRecord
{
    public static Draft On(string day)
    {
        var on = DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        var draft = Flawless.Many(new Dice(1), 1, "rope-bridge");
        draft.Visit["examinedOn"] = day;
        draft.Visit["reportedOn"] = day;
        draft.Items.Clear();
        draft.Items.Add(
            JsonNode.Parse(
                """
                { "id": "B-1", "category": "rope-bridge", "description": "Bridge", "maker": "M", "model": "R", "partNumber": "P-1", "serial": "S-1",
                  "manufactured": "2020-02-03", "firstUsed": "2020-03-20", "safeWorkingLoad": { "value": 1, "unit": "persons" },
                  "purpose": "lifts-persons", "status": "in-use" }
                """
            )
        );
        draft.Limits.Clear();
        draft.Limits.Add(
            JsonNode.Parse(
                """{ "maker": "M", "model": "R", "source": { "title": "Instructions", "revision": "1", "page": "2" }, "maxAgeYears": 30 }"""
            )
        );
        draft.Examinations.Clear();
        draft.Examinations.Add(Flawless.Examination("B-1", Kinds.All["rope-bridge"], new Dice(2)));
        return new Draft
        {
            Record = draft.Record,
            On = on,
            AsOf = on,
        };
    }

    /// <summary>Sets members of an item, a limits entry or an examination: "item.firstUsed=2023-05-11 limit.maxUseYears=3".</summary>
    public static Draft With(string day, string changes)
    {
        var draft = On(day);
        foreach (var change in changes.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var (path, value) = (
                change[..change.IndexOf('=', StringComparison.Ordinal)],
                change[(change.IndexOf('=', StringComparison.Ordinal) + 1)..]
            );
            Apply(draft, path, value);
        }

        return draft;
    }

    private static void Apply(Draft draft, string path, string value)
    {
        switch (path)
        {
            case "later":
                Later(draft, value);
                break;
            case "readings":
                (draft.Limit(0)["nominalDiameterMm"], draft.Limit(0)["diameterTolerancePercent"]) = (11.0m, 10m);
                Draft.List(draft.Exam(0), "diameters").Add(JsonNode.Parse($$"""{ "positionMm": 50, "readingsMm": [{{value}}] }"""));
                break;
            case "withdrawn":
                var earlier = Flawless.Examination("B-1", Kinds.All["rope-bridge"], new Dice(2));
                (earlier["examinedOn"], earlier["conclusion"]) = (value, "withdraw");
                draft.Examinations.Add(earlier);
                break;
            case "released":
                draft
                    .List("releases")
                    .Add(
                        new JsonObject
                        {
                            ["item"] = "B-1",
                            ["by"] = "ex1",
                            ["on"] = value,
                            ["grounds"] = "mended by the maker, and looked at again",
                        }
                    );
                break;
            case "unobtainable":
                draft.Limit(0).Remove("maxAgeYears");
                draft.Limit(0)["unobtainable"] = new JsonObject { ["sought"] = "everywhere", ["useUntil"] = value };
                break;
            case "scheme":
                draft.Exam(0)["basis"] = "scheme";
                draft.Exam(0)["scheme"] = new JsonObject
                {
                    ["reference"] = "S",
                    ["author"] = "A",
                    ["months"] = int.Parse(value, CultureInfo.InvariantCulture),
                };
                break;
            case "event":
                draft.Limit(0)["eventEndsService"] = true;
                draft.Exam(0)["basis"] = "exceptional";
                draft.Exam(0)["event"] = new JsonObject { ["what"] = "a fall", ["on"] = value };
                break;
            case "use":
                draft.Exam(0)["exposure"] = new JsonObject { ["use"] = value };
                break;
            default:
                Set(draft, path.Split('.'), value);
                break;
        }
    }

    private static void Set(Draft draft, string[] path, string value)
    {
        var owner = path[0] switch
        {
            "item" => draft.Item(0),
            "limit" => draft.Limit(0),
            _ => draft.Exam(0),
        };
        owner[path[1]] = value switch
        {
            "none" => null,
            "true" => true,
            _ when value.Length <= 3 && int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) => number,
            _ => value,
        };
        if (value == "none")
        {
            owner.Remove(path[1]);
        }
    }

    private static void Later(Draft draft, string value)
    {
        var answer = draft.Answer(0, "cover-abrasion");
        (answer["state"], answer["note"]) = ("defect", "worn");
        var entry = AnswerSlips.Entry(new Dice(3), "cover-abrasion", "later");
        (entry["imminentRisk"], entry["becomesDangerOn"]) = (false, value);
        Draft.List(draft.Exam(0), "defects").Add(entry);
    }
}
