using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>Makes the history of a seed: visits of some firms to a handful of things, in the runs in which they are handed in.</summary>
internal sealed class Chronicle
{
    private static readonly string[] Firms =
    [
        "Alderwick Trees Ltd",
        "Brackmoor Arb",
        "Carrowfell and Daughters Ltd",
        "Dunmere Ropes",
        "Elmstowe Hire Ltd",
    ];

    private readonly Dice _dice;
    private readonly bool _prints;
    private readonly int _noise;
    private readonly List<string> _firms;
    private readonly List<Thing> _things = [];
    private readonly List<List<(JsonObject Record, string Label)>> _runs = [];
    private int _labels;
    private DateOnly _day = new(2024, 1, 10);

    private Chronicle(long seed, bool prints)
    {
        (_dice, _prints) = (Dice.For(seed, 0), prints);
        _noise = _dice.One(0, 0, 10, 30, 60);
        _firms = [.. Firms.Take(_dice.One(1, 1, 1, 2, 2, 3, 5))];
    }

    /// <param name="seed">Its number.</param>
    /// <param name="prints">Whether what is withdrawn gets a label with a number.</param>
    public static IReadOnlyList<Run> Of(long seed, bool prints = true)
    {
        Chronicle chronicle = new(seed, prints);
        chronicle.Tell();
        var runs = chronicle._runs.ConvertAll(run => new Run(
            [.. run.Select(r => r.Record.ToJsonString())],
            chronicle._day.AddDays(10),
            prints ? [.. run.Select(r => r.Label)] : null
        ));
        return chronicle._dice.Chance(25) ? [.. runs.OrderBy(_ => chronicle._dice.Next())] : runs;
    }

    private void Tell()
    {
        for (var count = _dice.Between(1, 5); count > 0; count--)
        {
            _things.Add(Thing.Drawn(_dice, _dice.Of(_firms)));
        }

        foreach (var part in _things.Where(thing => thing.Category is "rope-bridge" or "connector"))
        {
            part.On = _dice.Chance(60) ? _things.Find(whole => whole.Category == "harness" && whole.Owner == part.Owner) : null;
        }

        var visits = _dice.Between(1, 6);
        for (var visit = 1; visit <= visits; visit++)
        {
            Occasion(visit);
            _day = _day.AddDays(_dice.One(0, 30, 90, 150, 160, 170, 170));
        }
    }

    private void Occasion(int visit)
    {
        Change();
        var owner = _dice.Of(_things).Owner;
        var here = _things.Where(thing => thing.Owner == owner && _dice.Chance(80)).ToList();
        var halves = here.Count > 1 && _dice.Chance(40) ? here.GroupBy(_ => _dice.Below(2)).Select(half => half.ToList()).ToList() : [here];
        var records = halves
            .Select((half, n) => Record($"V-{visit}{"abc"[n]}", owner, half))
            .Where(r => r.Record["items"]!.AsArray().Count > 0)
            .ToList();
        if (records.Count > 0 && (_runs.Count == 0 || !_dice.Chance(20)))
        {
            _runs.Add(records);
        }
        else if (records.Count > 0)
        {
            _runs[^1].AddRange(records);
        }

        if (_runs.Count > 0 && _dice.Chance(15))
        {
            _runs.Add([(Correcting.Version(_dice.Of(_dice.Of(_runs)).Record, _dice), NextLabel())]);
        }
    }

    private string NextLabel() => FormattableString.Invariant($"Q-2030-{++_labels:0000}");

    /// <summary>Things are sold, tagged anew, replaced under their old tag.</summary>
    private void Change()
    {
        var thing = _dice.Of(_things);
        switch (_dice.Below(14))
        {
            case 0:
                thing.Owner = _dice.Of(_firms);
                break;
            case 1:
                thing.Formerly.AddRange(thing.IsRecorded ? [thing.Id] : []);
                thing.Id = thing.Id + "-B";
                break;
            case 2:
                var other = Thing.Drawn(_dice, thing.Owner);
                _things[_things.IndexOf(thing)] = other;
                other.Id = other.Category == thing.Category ? thing.Id : other.Id;
                break;
            case 3:
                _things.Add(Thing.Drawn(_dice, thing.Owner));
                break;
            default:
                break;
        }
    }

    private (JsonObject Record, string Label) Record(string reference, string owner, List<Thing> things)
    {
        var isHired = _dice.Chance(10);
        var name = _dice.Chance(_noise) ? Respelling.Firm(owner, _dice) : owner;
        var record = Visits.Empty(reference, _day, isHired ? "Some Hirer" : name, isHired ? name : null);
        var label = NextLabel();
        Writing writing = new(record, _things, _noise, _dice);
        // A withdrawal gets its label's number from the place of its row.
        foreach (var thing in things.Where(thing => !record["items"]!.AsArray().Any(row => (string?)row!["id"] == thing.Id)))
        {
            writing.Write(thing, _prints ? $"{label}{record["items"]!.AsArray().Count:00}" : null);
        }

        writing.Renew(things);
        return (record, label);
    }
}
