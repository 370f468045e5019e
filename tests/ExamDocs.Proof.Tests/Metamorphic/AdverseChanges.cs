using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Metamorphic;

/// <summary>Changes for the worse: after any of them no item may stand better than before.</summary>
internal static class AdverseChanges
{
    public static readonly IReadOnlyList<(string Name, Action<Draft, Dice, int> Apply)> All =
    [
        ("a doubt", (draft, dice, i) => FromClear(draft, dice, i, "doubt")),
        ("a defect", (draft, dice, i) => FromClear(draft, dice, i, "defect")),
        ("not examined", (draft, dice, i) => FromClear(draft, dice, i, "not-examined")),
        ("a note", (draft, dice, i) => FromClear(draft, dice, i, "noted")),
        ("a defect entered as a danger now", (draft, dice, i) => Enter(draft, i, AnswerSlips.Entry(dice, "marking", "now"))),
        ("a defect entered as a danger later", (draft, dice, i) =>
        {
            var entry = AnswerSlips.Entry(dice, "marking", "later");
            entry["becomesDangerOn"] = Flawless.Text(draft.On.AddDays(dice.Between(-3, 200)));
            Enter(draft, i, entry);
        }),
        ("the examiner withdraws it", (draft, _, i) => draft.Exam(i)["conclusion"] = "withdraw"),
        ("obsolete yesterday", (draft, _, i) => draft.Item(i)["obsoleteOn"] = Flawless.Text(draft.On.AddDays(-1))),
        ("use ended", (draft, _, i) =>
        {
            var limit = draft.Limit(i);
            if (draft.Item(i)["neverUsed"] is null && limit["noLimit"] is null && (string?)draft.Item(i)["firstUsed"] is { Length: 10 })
            {
                limit["maxUseYears"] = 1;
                draft.Item(i)["firstUsed"] = Flawless.Text(draft.On.AddYears(-1).AddDays(-1));
            }
        }),
        ("cleaned too often", (draft, _, i) => (draft.Limit(i)["maxCleanings"], draft.Item(i)["cleanings"]) = (1, 2)),
        ("withdrawn before", (draft, _, i) =>
            draft.Store.Add(new SecondEvaluator.PastHold(draft.Id(i), "Q-2021-000001", draft.On.AddDays(-9), ["W1"], false, []))
        ),
    ];

    private static void Enter(Draft draft, int item, JsonObject entry) => Draft.List(draft.Exam(item), "defects").Add(entry);

    private static void FromClear(Draft draft, Dice dice, int item, string state)
    {
        List<JsonObject> clear =
        [
            .. Draft.List(draft.Exam(item), "observations").Select(o => o!.AsObject()).Where(o => (string?)o["state"] == "clear"),
        ];
        if (clear.Count > 0)
        {
            var answer = dice.Of(clear);
            (answer["state"], answer["note"]) = (state, "seen");
        }
    }
}
