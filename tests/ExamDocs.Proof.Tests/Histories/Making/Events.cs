using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>What an examiner finds, and what becomes of it.</summary>
internal static class Events
{
    private const string Withdraw = "withdraw";

    /// <summary>Something for the worse at this examination; true where the item is withdrawn by it.</summary>
    public static bool Find(JsonObject record, JsonObject row, JsonObject examination, Dice dice)
    {
        var kind = dice.Below(11);
        switch (kind)
        {
            case 0 or 1:
                Defect(record, examination, "contamination", new JsonObject { ["danger"] = "now" });
                break;
            case 2:
                Defect(record, examination, "severe-load", new JsonObject { ["danger"] = "now" });
                break;
            case 3 or 4:
                Visits.Answer(examination, "identity", "doubt");
                break;
            case 5 or 6:
                break;
            case 7:
                Defect(record, examination, "marking", new JsonObject { ["danger"] = "now" });
                break;
            case 8:
                Defect(
                    record,
                    examination,
                    "marking",
                    new JsonObject
                    {
                        ["danger"] = "later",
                        ["becomesDangerOn"] = Flawless.Text(
                            DateOnly.ParseExact(Visits.Day(record), "yyyy-MM-dd").AddDays(dice.Between(40, 300))
                        ),
                    }
                );
                return false;
            case 9:
                examination["observations"]!.AsArray().RemoveAt(0);
                return false;
            default:
                row["status"] = "destroyed";
                break;
        }

        if (kind != 10 && dice.Chance(85))
        {
            examination["conclusion"] = Withdraw;
        }

        return true;
    }

    private static void Defect(JsonObject record, JsonObject examination, string criterion, JsonObject defect)
    {
        defect["criterion"] = criterion;
        defect["description"] = "worn";
        defect["part"] = "the label";
        defect["remedy"] = "renew it";
        defect["notified"] = new JsonObject
        {
            ["whom"] = "The keeper",
            ["how"] = "by word",
            ["on"] = Visits.Day(record),
        };
        Draft.List(examination, "defects").Add(defect);
        Visits.Answer(examination, criterion, "defect");
    }

    /// <summary>A release of one of the thing's withdrawals, mostly a sound one.</summary>
    public static void Release(JsonObject record, string id, Thing thing, Dice dice)
    {
        if (thing.Withdrawn.Count == 0)
        {
            return;
        }

        var (day, label) = dice.Of(thing.Withdrawn);
        var on = DateOnly.ParseExact(Visits.Day(record), "yyyy-MM-dd");
        JsonObject release = new()
        {
            ["item"] = id,
            ["by"] = dice.Chance(95) ? "ex1" : "ex7",
            ["on"] = Flawless.Text(on.AddDays(dice.One(0, 0, 0, 0, 0, 0, -1, 1, -400))),
            ["grounds"] = dice.Chance(90) ? "cleaned and looked at again" : dice.One(".", "fine", "ok ok"),
        };
        if (label is not null && dice.Chance(50))
        {
            release["document"] = dice.Chance(90) ? label : "Q-2031-000001";
        }
        else
        {
            release["withdrawnOn"] = dice.Chance(95) ? day : "2020-02-02";
        }

        if (dice.One("made-good", "examined-again", "recorded-in-error", "recorded-in-error", null) is { } because)
        {
            release["because"] = because;
        }

        Draft.List(record, "releases").Add(release);
        if (dice.Chance(50))
        {
            Draft
                .List(record, "remedies")
                .Add(
                    new JsonObject
                    {
                        ["item"] = id,
                        ["what"] = "cleaned",
                        ["doneBy"] = "Ada Fenn",
                        ["doneOn"] = Flawless.Text(on.AddDays(dice.One(0, 0, -1, -500))),
                        ["evidence"] = "a note",
                    }
                );
        }
    }

    public static void Dispose(JsonObject record, string id, Dice dice) =>
        Draft
            .List(record, "disposals")
            .Add(
                new JsonObject
                {
                    ["item"] = id,
                    ["action"] = dice.One("quarantined", "sent for repair", "destroyed"),
                    ["by"] = "Ada Fenn",
                    ["on"] = Visits.Day(record),
                }
            );
}
