using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Generating;

/// <summary>Changes to what an examination found.</summary>
internal static class AnswerSlips
{
    private static readonly string[] States = ["clear", "noted", "doubt", "defect", "no-sign", "not-examined", "not-applicable"];

    public static readonly Slip[] All =
    [
        new("a criterion answered with any state", 6, AnyState),
        new("a defect that is a danger now", 2, (draft, dice, i) => Defect(draft, dice, i, "now")),
        new("a defect that could become a danger later", 6, Later),
        new("an entry left without its criterion's defect", 1, (draft, dice, i) =>
            Draft.List(draft.Exam(i), "defects").Add(Entry(dice, "marking", "now"))
        ),
        new("a misspelt state", 1, (draft, dice, i) => AnyAnswer(draft, dice, i)["state"] = dice.One("claer", "ok", "defekt")),
        new("a required answer missing", 2, Remove),
        new("an answer without its note", 1, (draft, dice, i) =>
        {
            AnyState(draft, dice, i);
            AnyAnswer(draft, dice, i).Remove("note");
        }),
        new("a criterion answered twice", 1, Twice),
        new("a criterion that there is not", 1, (draft, dice, i) => AnyAnswer(draft, dice, i)["criterion"] = "colour-of-hat"),
        new("a diameter near the band", 3, Diameter),
        new("the examiner withdraws it", 2, (draft, _, i) => draft.Exam(i)["conclusion"] = "withdraw"),
        new("a conclusion missing or misspelt", 1, (draft, dice, i) => draft.Exam(i)["conclusion"] = dice.One("", "fine")),
        new("no examination", 1, (draft, _, i) => draft.Examinations.Remove(draft.Exam(i))),
    ];

    public static JsonObject Entry(Dice dice, string criterion, string danger) =>
        new()
        {
            ["criterion"] = criterion,
            ["part"] = "left side",
            ["description"] = "worn",
            ["danger"] = danger,
            ["remedy"] = "renew",
            ["imminentRisk"] = dice.Chance(5),
            ["notified"] = new JsonObject { ["whom"] = "keeper", ["how"] = "in writing" },
        };

    private static JsonObject AnyAnswer(Draft draft, Dice dice, int item)
    {
        var answers = Draft.List(draft.Exam(item), "observations");
        return answers.Count == 0 ? [] : answers[dice.Below(answers.Count)]!.AsObject();
    }

    private static void AnyState(Draft draft, Dice dice, int item)
    {
        var answer = AnyAnswer(draft, dice, item);
        var state = dice.Of(States);
        (answer["state"], answer["note"]) = (state, "seen");
        if (state == "defect")
        {
            Draft.List(draft.Exam(item), "defects").Add(Entry(dice, (string?)answer["criterion"] ?? "", dice.One("now", "now", "")));
        }

        if (state is "defect" or "doubt" && dice.Chance(60))
        {
            draft.Exam(item)["conclusion"] = "withdraw";
        }
    }

    private static JsonObject Defect(Draft draft, Dice dice, int item, string danger)
    {
        var kind = draft.Kind(item);
        List<Criterion> weighed = [.. kind.Criteria.Values.Where(c => c.Class != "decisive" || dice.Chance(10))];
        var criterion = dice.Of(weighed).Id;
        var answer = draft.Answer(item, criterion);
        (answer["state"], answer["note"]) = ("defect", "seen");
        var entry = Entry(dice, criterion, danger);
        Draft.List(draft.Exam(item), "defects").Add(entry);
        if (danger == "now" && dice.Chance(70))
        {
            draft.Exam(item)["conclusion"] = "withdraw";
        }

        return entry;
    }

    private static void Later(Draft draft, Dice dice, int item)
    {
        var entry = Defect(draft, dice, item, "later");
        if (!dice.Chance(5))
        {
            entry["becomesDangerOn"] = Flawless.Text(draft.On.AddDays(dice.One(-1, 0, 1, 2, 30, 90, 200, 400)));
        }

        if (dice.Chance(5))
        {
            entry.Remove("remedy");
        }
    }

    private static void Remove(Draft draft, Dice dice, int item)
    {
        var answers = Draft.List(draft.Exam(item), "observations");
        if (answers.Count > 0)
        {
            answers.RemoveAt(dice.Below(answers.Count));
        }
    }

    private static void Twice(Draft draft, Dice dice, int item)
    {
        var first = AnyAnswer(draft, dice, item);
        if (first["criterion"] is not null)
        {
            var second = first.DeepClone().AsObject();
            (second["state"], second["note"]) = (dice.Of(States), "seen again");
            Draft.List(draft.Exam(item), "observations").Insert(dice.Below(3), second);
        }
    }

    /// <summary>A tenth of a millimetre's last digit around the lower and the upper bound.</summary>
    private static void Diameter(Draft draft, Dice dice, int item)
    {
        var limit = draft.Limit(item);
        var nominal = dice.One(11.0m, 10.5m, 13m);
        var tolerance = dice.One(10m, 4m, 5m);
        (limit["nominalDiameterMm"], limit["diameterTolerancePercent"]) = (nominal, tolerance);
        var bound = nominal * (100 + (dice.Chance(50) ? tolerance : -tolerance)) / 100;
        var step = dice.Between(-1, 1) * 0.001m;
        var spread = dice.One(0m, 0.2m);
        Draft
            .List(draft.Exam(item), "diameters")
            .Add(
                new JsonObject
                {
                    ["positionMm"] = 10 * dice.Between(1, 90000),
                    ["readingsMm"] = new JsonArray(bound + step + spread, bound + step - spread),
                }
            );
    }
}
