using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Generating;

/// <summary>Changes to dates, limits and intervals.</summary>
internal static class TimeSlips
{
    public static readonly Slip[] All =
    [
        new("time in use near its end", 3, Use),
        new("age near its end", 3, (draft, dice, i) => FromMaking(draft, dice, i, "maxAgeYears")),
        new("storage near its end, never used", 2, (draft, dice, i) =>
        {
            FromMaking(draft, dice, i, "maxStorageYears");
            draft.Item(i).Remove("firstUsed");
            draft.Item(i)["neverUsed"] = true;
        }),
        new("stored long before first use", 2, Stored),
        new("obsolete soon", 3, (draft, dice, i) => draft.Item(i)["obsoleteOn"] = Near(draft, dice)),
        new("instructions not to be had", 2, Unobtainable),
        new("no limit", 1, (draft, dice, i) =>
        {
            Untimed(draft, i);
            draft.Limit(i)["noLimit"] = true;
        }),
        new("no duration", 2, (draft, _, i) => Untimed(draft, i)),
        new("no limits at all", 1, (draft, _, i) => draft.Limits.Remove(draft.Limit(i))),
        new("a date less precise", 3, LessPrecise),
        new("a date missing", 2, (draft, dice, i) => draft.Item(i).Remove(dice.One("manufactured", "firstUsed", "purchased"))),
        new("dates missing", 1, (draft, _, i) =>
        {
            draft.Item(i).Remove("manufactured");
            draft.Item(i).Remove("firstUsed");
        }),
        new("never used", 1, (draft, _, i) =>
        {
            draft.Item(i).Remove("firstUsed");
            draft.Item(i)["neverUsed"] = true;
        }),
        new("cleanings", 1, (draft, dice, i) =>
        {
            draft.Limit(i)["maxCleanings"] = 10;
            draft.Item(i)["cleanings"] = dice.Between(9, 11);
        }),
        new("cleanings not counted", 1, (draft, _, i) => draft.Limit(i)["maxCleanings"] = 10),
        new("an event", 1, Event),
        new("the maker's interval", 2, (draft, dice, i) => draft.Limit(i)["intervalMonths"] = dice.Between(1, 14)),
        new("the examiner's next date", 2, (draft, dice, i) =>
            draft.Exam(i)["nextBy"] = Flawless.Text(draft.On.AddDays(dice.One(-1, 0, 1, 30, 100, 181, 250)))
        ),
        new("arduous use", 1, (draft, dice, i) =>
            draft.Exam(i)["exposure"] = new JsonObject { ["use"] = dice.One("arduous, daily", "weekly") }
        ),
        new("another purpose", 2, (draft, dice, i) =>
            draft.Item(i)["purpose"] = dice.One("lifts-persons", "accessory", "other", "", "fall-arrest-only")
        ),
        new("examined on a day of its own", 1, OwnDay),
        new("dates out of order", 1, (draft, dice, i) =>
            draft.Item(i)["manufactured"] = Flawless.Text(draft.On.AddDays(dice.One(-1, 0, 1, 400)))
        ),
    ];

    /// <summary>Near the day examined, or near the day of the next examination.</summary>
    private static string Near(Draft draft, Dice dice) => Flawless.Text(NearDay(draft, dice));

    private static DateOnly NearDay(Draft draft, Dice dice) =>
        Days.AfterMonths(draft.On, dice.One(0, 0, 6, 6, 3, 12)).AddDays(dice.Between(-1, 1));

    private static void Untimed(Draft draft, int item)
    {
        foreach (var name in (string[])["maxUseYears", "maxAgeYears", "maxStorageYears"])
        {
            draft.Limit(item).Remove(name);
        }
    }

    private static void Use(Draft draft, Dice dice, int item)
    {
        var years = dice.Between(1, 3);
        draft.Limit(item)["maxUseYears"] = years;
        var used = Days.AfterYears(NearDay(draft, dice), -years);
        draft.Item(item)["firstUsed"] = Flawless.Text(used);
        draft.Item(item)["purchased"] = Flawless.Text(used.AddDays(-5));
        draft.Item(item)["manufactured"] = Flawless.Text(used.AddDays(-30));
    }

    private static void FromMaking(Draft draft, Dice dice, int item, string limit)
    {
        var years = dice.Between(2, 4);
        draft.Limit(item)[limit] = years;
        var made = Days.AfterYears(NearDay(draft, dice), -years);
        draft.Item(item)["manufactured"] = Flawless.Text(made);
        draft.Item(item)["purchased"] = Flawless.Text(made.AddDays(5));
        draft.Item(item)["firstUsed"] = Flawless.Text(made.AddDays(30));
    }

    private static void Stored(Draft draft, Dice dice, int item)
    {
        var years = dice.Between(1, 2);
        draft.Limit(item)["maxStorageYears"] = years;
        var used = draft.On.AddDays(-dice.Between(160, 300));
        draft.Item(item)["firstUsed"] = Flawless.Text(used);
        draft.Item(item)["purchased"] = Flawless.Text(used.AddDays(-5));
        draft.Item(item)["manufactured"] = Flawless.Text(Days.AfterYears(used, -years).AddDays(dice.Between(-1, 1)));
    }

    private static void Unobtainable(Draft draft, Dice dice, int item)
    {
        Untimed(draft, item);
        draft.Limit(item)["unobtainable"] = new JsonObject { ["sought"] = "asked the maker's heirs", ["useUntil"] = Near(draft, dice) };
    }

    private static void LessPrecise(Draft draft, Dice dice, int item)
    {
        var name = dice.One("manufactured", "firstUsed", "obsoleteOn", "purchased");
        if ((string?)draft.Item(item)[name] is { Length: 10 } day)
        {
            draft.Item(item)[name] = day[..dice.One(4, 7, 7)];
        }
    }

    private static void Event(Draft draft, Dice dice, int item)
    {
        draft.Limit(item)["eventEndsService"] = dice.Chance(60);
        var happened = new JsonObject { ["what"] = "arrested a fall" };
        if (dice.Chance(80))
        {
            happened["on"] = Flawless.Text(draft.On.AddDays(dice.One(-30, -1, 0, 1)));
        }

        draft.Exam(item).Remove("scheme");
        (draft.Exam(item)["basis"], draft.Exam(item)["event"]) = ("exceptional", happened);
    }

    private static void OwnDay(Draft draft, Dice dice, int item) =>
        draft.Exam(item)["examinedOn"] = Flawless.Text(draft.On.AddDays(dice.One(1, 2, 0, -1)));
}
