using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Generating;

/// <summary>Changes to what belongs to what, and to what went before.</summary>
internal static class AssemblySlips
{
    public static readonly Slip[] All =
    [
        new("permitted parts", 4, Permit),
        new("a part taken off", 3, TakenOff),
        new("a part replaced", 3, Replaced),
        new("a part fitted to nothing", 1, (draft, _, i) => draft.Item(i)["fittedTo"] = "K-99"),
        new("a part fitted to another", 1, (draft, dice, i) => draft.Item(i)["fittedTo"] = draft.Id(dice.Below(draft.Count))),
        new("an earlier examination", 4, Earlier),
        new("a withdrawal that the store remembers", 4, Remembered),
        new("a narrower entry of limits", 2, Narrower),
        new("an entry of limits twice", 1, (draft, _, i) =>
        {
            var copy = draft.Limit(i).DeepClone();
            if (copy["maker"] is not null)
            {
                draft.Limits.Add(copy);
            }
        }),
    ];

    private static int? PartOf(Draft draft, int whole)
    {
        for (var index = 0; index < draft.Count; index++)
        {
            if ((string?)draft.Item(index)["fittedTo"] == draft.Id(whole) && index != whole)
            {
                return index;
            }
        }

        return null;
    }

    private static int Whole(Draft draft, int part)
    {
        for (var index = 0; index < draft.Count; index++)
        {
            if (draft.Id(index) == (string?)draft.Item(part)["fittedTo"])
            {
                return index;
            }
        }

        return part;
    }

    private static void Permit(Draft draft, Dice dice, int item)
    {
        var part = PartOf(draft, item) ?? item;
        var limits = draft.Limit(Whole(draft, part));
        limits["permittedParts"] = dice.Chance(50)
            ? new JsonArray("P-77", (string?)draft.Item(part)["partNumber"] ?? "P-76")
            : new JsonArray("P-77", "P-78");
        if (dice.Chance(10))
        {
            draft.Item(part).Remove("partNumber");
        }
    }

    /// <summary>Of a pair of whole and part the part is taken off, often because it had to be.</summary>
    private static void TakenOff(Draft draft, Dice dice, int item)
    {
        if (PartOf(draft, item) is not { } part)
        {
            return;
        }

        draft
            .List("renewals")
            .Add(
                new JsonObject
                {
                    ["item"] = draft.Id(item),
                    ["removedPart"] = draft.Id(part),
                    ["reason"] = "worn",
                    ["doneBy"] = "ex1",
                    ["supervisedBy"] = "ex1",
                    ["doneOn"] = Flawless.Text(draft.On),
                }
            );
        draft
            .List("disposals")
            .Add(
                new JsonObject
                {
                    ["item"] = draft.Id(part),
                    ["action"] = "quarantined",
                    ["by"] = "Person ex1",
                    ["on"] = Flawless.Text(draft.On),
                }
            );
        if (dice.Chance(80))
        {
            draft.Exam(part)["conclusion"] = "withdraw";
        }
    }

    /// <summary>One part off and another on, sometimes before it was looked at or after its life.</summary>
    private static void Replaced(Draft draft, Dice dice, int item)
    {
        TakenOff(draft, dice, item);
        if (PartOf(draft, item) is not { } old || draft.List("renewals") is not { Count: > 0 } renewals)
        {
            return;
        }

        var part = draft.Item(old).DeepClone().AsObject();
        (part["id"], part["serial"], part["model"], part["fittedTo"]) = ("K-8", "S-8", "Model 8", draft.Id(item));
        part["partNumber"] = dice.One("P-77", "P-8");
        part["firstUsed"] = Flawless.Text(draft.On);
        draft.Items.Add(part);
        var limit = draft.Limit(old).DeepClone().AsObject();
        (limit["maker"], limit["model"]) = ((string?)part["maker"], "Model 8");
        limit["retying"] = dice.One("maker", "user", "competent-person");
        draft.Limits.Add(limit);
        var examination = draft.Exam(old).DeepClone().AsObject();
        (examination["item"], examination["conclusion"]) = ("K-8", "fit");
        draft.Examinations.Add(examination);
        var renewal = renewals[^1]!.AsObject();
        renewal["fittedPart"] = "K-8";
        renewal["doneOn"] = Flawless.Text(draft.On.AddDays(dice.One(-1, 0, 0, 0, 1)));
        if (dice.Chance(20))
        {
            renewal["retiedBy"] = "ex1";
        }
    }

    private static void Earlier(Draft draft, Dice dice, int item)
    {
        var on = draft.On.AddDays(-dice.Between(100, 190));
        var earlier = Flawless.Examination(draft.Id(item), draft.Kind(item), dice);
        earlier["examinedOn"] = Flawless.Text(on);
        draft.Examinations.Add(earlier);
        if (dice.Chance(25))
        {
            return;
        }

        earlier["conclusion"] = "withdraw";
        if (dice.Chance(50))
        {
            var answers = Draft.List(earlier, "observations");
            var answer = answers[dice.Below(answers.Count)]!.AsObject();
            (answer["state"], answer["note"]) = (dice.One("defect", "doubt"), "seen");
        }

        Release(draft, dice, draft.Id(item), on, null);
    }

    private static void Remembered(Draft draft, Dice dice, int item)
    {
        var on = draft.On.AddDays(-dice.Between(1, 190));
        var part = PartOf(draft, item);
        string[] codes = part is null ? [dice.One("W1", "W6", "W8", "W5")] : [dice.One("W9", "W9", "W1")];
        var parts = codes[0] switch
        {
            "W9" => [draft.Id(part!.Value)],
            "W8" => new[] { (string?)draft.Item(item)["fittedTo"] ?? "K-55" },
            _ => [],
        };
        var document = $"Q-2023-{dice.Between(1, 999999):000000}";
        draft.Store.Add(new PastHold(draft.Id(item), document, on, codes, codes[0] == "W5" || dice.Chance(10), parts));
        Release(draft, dice, draft.Id(item), on, dice.Chance(80) ? document : null);
    }

    private static void Release(Draft draft, Dice dice, string item, DateOnly since, string? document)
    {
        if (dice.Chance(35))
        {
            return;
        }

        JsonObject release = new()
        {
            ["item"] = item,
            ["by"] = "ex1",
            ["on"] = Flawless.Text(since.AddDays(dice.One(-1, 0, 1))),
            ["grounds"] = "repaired and examined",
        };
        if (document is not null)
        {
            release["document"] = document;
        }

        draft.List("releases").Add(release);
    }

    private static void Narrower(Draft draft, Dice dice, int item)
    {
        var narrow = draft.Limit(item).DeepClone().AsObject();
        if (narrow["maker"] is not null)
        {
            narrow["partNumber"] = dice.Chance(70) ? (string?)draft.Item(item)["partNumber"] : "P-66";
            narrow["maxAgeYears"] = dice.Between(1, 4);
            draft.Limits.Insert(dice.Below(2), narrow);
        }
    }
}
