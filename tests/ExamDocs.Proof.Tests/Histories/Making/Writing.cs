using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>Writes things into one record, with the slips of whoever types.</summary>
internal sealed class Writing(JsonObject record, List<Thing> world, int noise, Dice dice)
{
    private readonly Dictionary<Thing, string> _ids = [];

    // Within one record a maker is spelt one way, so that limits and items agree.
    private readonly Dictionary<string, string> _makers = [];

    public void Write(Thing thing, string? label)
    {
        var row = thing.Row();
        Blur(row);
        _ids[thing] = (string)row["id"]!;
        Tie(thing, row);
        Tell(thing, row);
        thing.IsRecorded = true;
        var isExamined = !dice.Chance(8);
        if (!isExamined)
        {
            row["status"] = dice.One("in-use", "lost", "not-presented", "lost");
        }

        if (dice.Chance(60))
        {
            Events.Release(record, _ids[thing], thing, dice);
        }

        if (Visits.Add(record, row, isExamined, dice) is not { } examination)
        {
            return;
        }

        if (dice.Chance(25) && Events.Find(record, row, examination, dice))
        {
            thing.Withdrawn.Add((Visits.Day(record), label));
            if (dice.Chance(15))
            {
                Events.Dispose(record, _ids[thing], dice);
            }
        }
    }

    /// <summary>A part is taken off one of the wholes, sometimes another is put on.</summary>
    public void Renew(IReadOnlyList<Thing> things)
    {
        if (
            things.FirstOrDefault(whole => whole.Category == "harness" && _ids.ContainsKey(whole)) is not { } harness
            || !dice.Chance(25)
            || world.Find(thing => thing.On == harness) is not { } old
        )
        {
            return;
        }

        JsonObject renewal = new()
        {
            ["item"] = _ids[harness],
            ["removedPart"] = _ids.GetValueOrDefault(old, old.Id),
            ["reason"] = "worn",
            ["doneBy"] = "ex1",
            ["supervisedBy"] = "ex1",
            ["doneOn"] = Visits.Day(record),
        };
        old.On = null;
        if (_ids.ContainsKey(old) && dice.Chance(85))
        {
            Row(_ids[old]).Remove("fittedTo");
        }

        if (dice.Chance(60))
        {
            var part = Thing.Drawn(dice, harness.Owner);
            part.Id = FormattableString.Invariant($"NP-{world.Count}");
            part.On = harness;
            world.Add(part);
            Write(part, null);
            Row(_ids[part])["fittedTo"] = _ids[harness];
            renewal["fittedPart"] = _ids[part];
        }

        Draft.List(record, "renewals").Add(renewal);
    }

    private JsonObject Row(string id) => record["items"]!.AsArray().Select(row => row!.AsObject()).First(row => (string?)row["id"] == id);

    private void Blur(JsonObject row)
    {
        foreach (var member in new[] { "id", "serial", "partNumber", "ownersMark" }.Where(m => row[m] is not null && dice.Chance(noise)))
        {
            var spelt = Respelling.Marking((string)row[member]!, dice).Trim();
            row[member] =
                dice.Chance(85) || member == "id" ? spelt
                : dice.Chance(50) ? Respelling.Slip(spelt, dice)
                : null;
        }

        var maker = (string)row["maker"]!;
        if (!_makers.TryGetValue(maker, out var typed))
        {
            typed =
                !dice.Chance(noise) ? maker
                : dice.Chance(80) ? Respelling.Firm(maker, dice)
                : Respelling.Slip(maker, dice);
            _makers[maker] = typed;
        }

        row["maker"] = typed;
    }

    private void Tie(Thing thing, JsonObject row)
    {
        if (thing.On is { } whole && dice.Chance(75))
        {
            row["fittedTo"] = _ids.GetValueOrDefault(whole, whole.Id);
        }
    }

    /// <summary>Which earlier item it is, and which it is not.</summary>
    private void Tell(Thing thing, JsonObject row)
    {
        if (thing.Formerly.Count > 0 && dice.Chance(60))
        {
            row["formerly"] = thing.Formerly[^1];
        }

        if (
            world.Find(other => other != thing && other.IsRecorded && (other.Id == thing.Id || other.Serial == thing.Serial)) is { } double_
            && dice.Chance(40)
        )
        {
            row["notTheSameAs"] = new JsonArray(
                new JsonObject { ["id"] = double_.Id, ["because"] = dice.Chance(90) ? "the plate on this one says so" : null }
            );
        }
    }
}
