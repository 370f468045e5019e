using System.Text.Json.Nodes;

namespace ExamDocs.Proof.Tests.Generating;

/// <summary>Words misspelt, members missing, ids twice.</summary>
internal static class WordSlips
{
    public static readonly Slip[] All =
    [
        new("a member that there is not", 1, (draft, dice, i) => dice.One(draft.Item(i), draft.Exam(i))["colour-of"] = "red"),
        new("a word of the item misspelt", 1, (draft, dice, i) => draft.Item(i)[dice.One("purpose", "status")] = "in-ues"),
        new("a category misspelt", 1, (draft, _, i) => draft.Item(i)["category"] = "harnes"),
        new("a word of the examination misspelt", 1, (draft, dice, i) => draft.Exam(i)[dice.One("basis", "regime")] = "monthly"),
        new("an examiner that there is not", 1, (draft, dice, i) =>
            draft.Exam(i)[dice.One("examiner", "author", "authenticatedBy")] = "ex9"
        ),
        new("another examiner", 1, (draft, dice, i) => draft.Exam(i)[dice.One("examiner", "author", "authenticatedBy")] = "ex2"),
        new("a person's particular missing", 1, (draft, dice, _) =>
            draft.People[1]!.AsObject().Remove(dice.One("name", "address", "qualifications", "employer"))
        ),
        new("an item's particular missing", 1, (draft, dice, i) =>
            draft.Item(i).Remove(dice.One("description", "serial", "safeWorkingLoad", "model"))
        ),
        new("a visit's particular missing", 1, Visit),
        new("an id twice", 1, (draft, dice, i) => draft.Item(i)["id"] = draft.Id(dice.Below(draft.Count))),
    ];

    private static void Visit(Draft draft, Dice dice, int item)
    {
        if (dice.Chance(50))
        {
            draft.Visit.Remove(dice.One("reference", "employer", "reportedOn"));
        }
        else if (draft.Visit["premises"] is JsonObject premises)
        {
            premises[dice.One("name", "address")] = "";
        }
    }
}
