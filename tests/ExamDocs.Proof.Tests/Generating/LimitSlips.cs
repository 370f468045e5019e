using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Generating;

/// <summary>Limits that are for part numbers, names spelt otherwise, laws beside the visit's, and kit said never to be used.</summary>
internal static class LimitSlips
{
    public static readonly Slip[] All =
    [
        new("limits that differ by part number", 5, ByPart),
        new("its part number otherwise", 2, (draft, dice, i) =>
            draft.Item(i)["partNumber"] = dice.One("", "Z-98", Respelt(dice, (string?)draft.Item(i)["partNumber"] ?? "P-0"))
        ),
        new("a name spelt otherwise", 2, (draft, dice, i) =>
        {
            var entry = dice.One(draft.Item(i), draft.Limit(i));
            var name = dice.One("maker", "model");
            entry[name] = Respelt(dice, (string?)entry[name] ?? "Model");
        }),
        new("a name misspelt", 3, Misspelt),
        new("a law of its own", 3, (draft, dice, i) =>
            draft.Exam(i)["regime"] = dice.One("gb-loler", "ni-loler", "gb-wah", "eu-en365", "de", "fr", "au-nz", "us")
        ),
        new("never used, and exposed", 2, (draft, dice, i) =>
        {
            draft.Item(i).Remove("firstUsed");
            draft.Item(i)["neverUsed"] = true;
            draft.Exam(i)["exposure"] = new JsonObject { [dice.One("use", "ground")] = dice.One("daily", "none", "arduous") };
        }),
        new("an entry on a decisive criterion", 2, Decisive),
    ];

    /// <summary>The same to a reader who does not mind capitals, blanks and separators.</summary>
    public static string Respelt(Dice dice, string name) =>
        dice.One(
            name.ToUpperInvariant(),
            name.ToLowerInvariant(),
            name.Replace('-', ' '),
            name.Replace(' ', '_'),
            name + " ",
            name.Replace("-", ". ", StringComparison.Ordinal)
        );

    private static void ByPart(Draft draft, Dice dice, int item)
    {
        if (draft.Limit(item) is not { Count: > 0 } general)
        {
            return;
        }

        var own = (string?)draft.Item(item)["partNumber"] ?? "P-7";
        foreach (var number in dice.One<string[]>([own, "Q9-1"], ["Q9-1", "Q9-2"], ["Q9-1"], [own]))
        {
            var entry = general.DeepClone().AsObject();
            entry["partNumber"] = number;
            Alter(entry, dice);
            draft.Limits.Add(entry);
        }

        if (dice.Chance(60))
        {
            draft.Limits.Remove(general);
        }

        draft.Item(item)["partNumber"] = dice.One(own, "", Respelt(dice, own), Respelt(dice, "Q9-1"), "Q91", "Z-98");
    }

    private static void Alter(JsonObject entry, Dice dice)
    {
        switch (dice.Below(7))
        {
            case 0:
                entry["maxUseYears"] = dice.Between(1, 4);
                break;
            case 1:
                entry["maxAgeYears"] = dice.Between(1, 4);
                break;
            case 2:
                entry["intervalMonths"] = dice.Between(1, 7);
                break;
            case 3:
                entry["permittedParts"] = new JsonArray("P-1", "P-2");
                break;
            case 4:
                (entry["nominalDiameterMm"], entry["diameterTolerancePercent"]) = (dice.One(8m, 11m), dice.One(4m, 10m));
                break;
            case 5:
                (entry["maxUseYears"], entry["maxAgeYears"], entry["maxStorageYears"]) = (null, null, null);
                break;
            default:
                (entry["maxUseYears"], entry["maxAgeYears"], entry["maxStorageYears"], entry["noLimit"]) = (null, null, null, true);
                break;
        }
    }

    private static void Misspelt(Draft draft, Dice dice, int item)
    {
        var entry = dice.One(draft.Item(item), draft.Limit(item));
        var name = dice.One("maker", "model");
        var typed = (string?)entry[name] ?? "Model";
        entry[name] = dice.One(
            "",
            typed[..^1],
            typed.Insert(2, "x"),
            typed.Replace("od", "do", StringComparison.Ordinal),
            "Something else",
            typed + " 5",
            typed.Replace('l', '1')
        );
        if (dice.Chance(50))
        {
            draft.Item(item)["obsoleteOn"] = draft.On.AddDays(dice.Between(20, 900)).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        }
    }

    private static void Decisive(Draft draft, Dice dice, int item)
    {
        var criterion = dice.Of<Criterion>([.. draft.Kind(item).Criteria.Values.Where(c => c.Class == "decisive")]).Id;
        var entry = AnswerSlips.Entry(dice, criterion, dice.One("later", "later", "now"));
        entry["becomesDangerOn"] = Flawless.Text(draft.On.AddDays(dice.One(0, 90, 800)));
        Draft.List(draft.Exam(item), "defects").Add(entry);
    }
}
