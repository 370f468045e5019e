using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Generating;

/// <summary>Makes a record without a flaw: every item in it may stay in service.</summary>
internal static class Flawless
{
    private static readonly string[] Categories = [.. Kinds.All.Keys];

    public static Draft Make(Dice dice)
    {
        var on = dice.Chance(25)
            ? dice.One(
                new DateOnly(2024, 2, 29),
                new DateOnly(2025, 8, 31),
                new DateOnly(2025, 2, 28),
                new DateOnly(2026, 12, 31),
                new DateOnly(2024, 8, 30)
            )
            : new DateOnly(2024, 1, 1).AddDays(dice.Below(1200));
        var lifting = !dice.Chance(20);
        var draft = new Draft
        {
            Record = Empty(
                on,
                lifting ? dice.One("gb-loler", "gb-loler", "ni-loler", "eu-en365", "de", "fr", "fr", "au-nz", "us") : "gb-wah"
            ),
            On = on,
            AsOf = on.AddDays(3),
        };
        var count = dice.Between(1, 5);
        for (var index = 0; index < count; index++)
        {
            AddItem(draft, dice, index, lifting);
        }

        return draft;
    }

    /// <summary>Many items that lift, of any category or of one.</summary>
    public static Draft Many(Dice dice, int count, string? category = null)
    {
        var on = new DateOnly(2024, 1, 1).AddDays(dice.Below(1200));
        var draft = new Draft
        {
            Record = Empty(on, "gb-loler"),
            On = on,
            AsOf = on.AddDays(3),
        };
        for (var index = 0; index < count; index++)
        {
            AddItem(draft, dice, index, true, category);
        }

        return draft;
    }

    public static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static JsonObject Examination(string item, Kind kind, Dice dice) =>
        new()
        {
            ["item"] = item,
            ["examiner"] = "ex1",
            ["basis"] = "six-month",
            ["observations"] = new JsonArray([
                .. kind
                    .Criteria.Values.Where(c => c.Required || dice.Chance(50))
                    .Select(c => new JsonObject { ["criterion"] = c.Id, ["state"] = "clear" }),
            ]),
            ["conclusion"] = "fit",
        };

    private static JsonObject Empty(DateOnly on, string regime) =>
        new()
        {
            ["format"] = "examdocs/1",
            ["visit"] = new JsonObject
            {
                ["reference"] = "V-1",
                ["regime"] = regime,
                ["employer"] = Party("Alderwick Trees"),
                ["premises"] = Party("Alderwick yard"),
                ["enforcingAuthority"] = Party("An authority"),
                ["examinedOn"] = Text(on),
                ["reportedOn"] = Text(on.AddDays(2)),
            },
            ["people"] = new JsonArray(Person("ex1", true), Person("ex2", false)),
            ["items"] = new JsonArray(),
            ["limits"] = new JsonArray(),
            ["examinations"] = new JsonArray(),
        };

    public static JsonObject Party(string name) => new() { ["name"] = name, ["address"] = "1 Some Lane, Norshire" };

    private static JsonObject Person(string id, bool selfEmployed)
    {
        JsonObject person = new()
        {
            ["id"] = id,
            ["name"] = "Person " + id,
            ["address"] = "2 Some Lane, Norshire",
            ["qualifications"] = "Guild examiner",
            ["selfEmployed"] = selfEmployed,
        };
        if (!selfEmployed)
        {
            person["employer"] = Party("Some examiners");
        }

        return person;
    }

    private static void AddItem(Draft draft, Dice dice, int index, bool lifting, string? only = null)
    {
        var category =
            only is not null ? only
            : lifting ? dice.Of(Categories)
            : dice.One("helmet", dice.Of(Categories));
        var made = draft.On.AddDays(-dice.Between(400, 1400));
        var used = made.AddDays(dice.Between(20, 200));
        JsonObject item = new()
        {
            ["id"] = $"K-{index}",
            ["category"] = category,
            ["description"] = "Some kit",
            ["maker"] = "Maker " + index,
            ["model"] = "Model",
            ["partNumber"] = "P-" + index,
            ["serial"] = "S-" + index,
            ["manufactured"] = Text(made),
            ["purchased"] = Text(made.AddDays(10)),
            ["firstUsed"] = Text(used),
            ["safeWorkingLoad"] = new JsonObject { ["value"] = 140, ["unit"] = "kg" },
            ["lastExamined"] = Text(draft.On.AddDays(-150)),
            ["status"] = "in-use",
            ["purpose"] =
                lifting && category != "helmet" ? dice.One("lifts-persons", "accessory", "other", "lifts-persons") : "fall-arrest-only",
        };
        if (index > 0 && only is null && dice.Chance(60))
        {
            item["fittedTo"] = $"K-{dice.Below(index)}";
        }

        draft.Items.Add(item);
        draft.Limits.Add(Limit(dice, index));
        var examination = Examination($"K-{index}", Kinds.All[category], dice);
        if (category == "helmet" && lifting)
        {
            examination["regime"] = "gb-wah";
        }

        if (dice.Chance(20))
        {
            examination["exposure"] = new JsonObject
            {
                ["use"] = dice.One("daily", "arduous, in sandy ground", "Arduous", "hand-powered winch", "power-driven winch"),
            };
        }

        Base(dice, item, examination);
        draft.Examinations.Add(examination);
    }

    private static void Base(Dice dice, JsonObject item, JsonObject examination)
    {
        if ((string?)item["purpose"] == "other" && dice.Chance(80))
        {
            examination["basis"] = "twelve-month";
        }
        else if (dice.Chance(10))
        {
            examination["basis"] = "scheme";
            examination["scheme"] = new JsonObject
            {
                ["reference"] = "SC-1",
                ["author"] = "Person ex1",
                ["months"] = dice.Between(1, 6),
            };
        }
    }

    private static JsonObject Limit(Dice dice, int index)
    {
        JsonObject limit = new()
        {
            ["maker"] = "Maker " + index,
            ["model"] = "Model",
            ["source"] = new JsonObject
            {
                ["title"] = "Instructions",
                ["revision"] = "1",
                ["page"] = "2",
            },
            [dice.One("maxUseYears", "maxAgeYears")] = dice.Between(8, 12),
        };
        if (dice.Chance(40))
        {
            limit["maxStorageYears"] = dice.Between(2, 7);
        }

        if (dice.Chance(30))
        {
            limit["intervalMonths"] = dice.One(3, 6, 12, 24);
        }

        return limit;
    }
}
