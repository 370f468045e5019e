using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>
/// Invented firms with a hundred items each, as kit is really kept: every firm numbers its tags from one, connectors come in
/// batches of one serial, some firms mark instead of reading serials, kit is sold and tagged anew, some of it is withdrawn.
/// </summary>
internal sealed class SoundFirms
{
    private readonly Dice _dice = new(2026);
    private readonly List<(string Name, List<Thing> Kit)> _firms = [];
    private readonly HashSet<Thing> _withdrawn = [];
    private int _serials = 1000;
    private int _batch = 1;

    public SoundFirms(int firms, int items)
    {
        string[] first = ["Ash", "Beck", "Corrie", "Dene", "Eller", "Fell", "Gill", "Holt"];
        string[] second = ["Tree Care", "Arb Ltd", "Woodland Works", "Climbers Ltd", "and Daughters"];
        for (var firm = 0; firm < firms; firm++)
        {
            var name = $"{first[firm % 8]} {second[firm / 8 % 5]}";
            _firms.Add((name, [.. Enumerable.Range(0, items).Select(n => Made(name, n, marksOnly: firm % 6 == 5))]));
            Fit(_firms[^1].Kit);
        }
    }

    /// <summary>One round of visits, a record for each firm, and which of its items are sound.</summary>
    public IEnumerable<(string Json, IReadOnlyList<bool> IsSound)> Round(int round)
    {
        foreach (var (name, kit) in _firms)
        {
            List<bool> sound = [];
            var record = Visits.Empty($"V-{round}", new DateOnly(2025, 1, 10).AddDays(170 * round), name);
            foreach (var thing in kit.ToList())
            {
                sound.Add(Write(record, thing));
            }

            yield return (record.ToJsonString(), sound);
        }

        Trade();
    }

    private Thing Made(string owner, int n, bool marksOnly)
    {
        var (category, tag) = (n % 10) switch
        {
            < 3 => ("harness", "H"),
            < 6 => ("rope-bridge", "RB"),
            < 9 => ("connector", "C"),
            _ => ("helmet", "M"),
        };
        // The maker stamps a batch of connectors alike; a firm buys ten at a time, and others buy from the same batch.
        _batch = n % 10 == 6 ? _dice.Between(1, 40) : _batch;
        var serial =
            marksOnly ? null
            : category == "connector" ? $"B{_batch}"
            : $"S{++_serials}";
        return new Thing
        {
            Category = category,
            Owner = owner,
            Id = $"{tag}-{n + 1:00}",
            Maker = _dice.One("Fennick Works Ltd", "Osk and Lund"),
            PartNumber = "SP-11",
            Serial = serial,
            Mark = serial is null || category == "connector" ? $"{tag}{n + 1}" : null,
            Made = _dice.One("2022-03", "2022-09", "2023-01"),
        };
    }

    private static void Fit(List<Thing> kit)
    {
        var harnesses = kit.Where(thing => thing.Category == "harness").ToList();
        foreach (var (bridge, at) in kit.Where(thing => thing.Category == "rope-bridge").Select((bridge, at) => (bridge, at)))
        {
            bridge.On = harnesses[at % harnesses.Count];
        }
    }

    /// <summary>True where it is sound and stands on sound parts.</summary>
    private bool Write(JsonObject record, Thing thing)
    {
        var row = thing.Row();
        row["fittedTo"] = thing.On?.Id;
        var examination = Visits.Add(record, row, true, _dice)!;
        if (_withdrawn.Contains(thing) || (thing.Category is "connector" or "helmet" or "harness" && _dice.Chance(2)))
        {
            _withdrawn.Add(thing);
            examination["conclusion"] = "withdraw";
        }

        return !_withdrawn.Contains(thing);
    }

    /// <summary>Between rounds: withdrawn kit leaves, most of it replaced, some under its old tag; kit is sold and tagged anew.</summary>
    private void Trade()
    {
        foreach (var (name, kit) in _firms)
        {
            foreach (var old in kit.Where(_withdrawn.Contains).Where(_ => _dice.Chance(70)).ToList())
            {
                kit.Remove(old);
                var part = kit.Find(thing => thing.On == old);
                var replacement = new Thing
                {
                    Category = old.Category,
                    Owner = name,
                    Id = _dice.Chance(30) ? old.Id : $"N-{_serials}",
                    Maker = old.Maker,
                    PartNumber = old.PartNumber,
                    Serial = $"S{++_serials}",
                    Mark = null,
                    Made = "2024-06",
                    Since = ("2024-08", "2024-09-01", null),
                };
                kit.Add(replacement);
                if (part is not null)
                {
                    part.On = replacement;
                }
            }
        }

        for (var firm = 0; firm < _firms.Count; firm++)
        {
            Sell(_firms[firm].Kit, _firms[(firm + 1) % _firms.Count]);
        }
    }

    private void Sell(List<Thing> from, (string Name, List<Thing> Kit) to)
    {
        foreach (
            var sold in from.Where(thing => thing.Category == "connector" && thing.On is null && !_withdrawn.Contains(thing))
                .Take(2)
                .ToList()
        )
        {
            from.Remove(sold);
            (sold.Owner, sold.Id) = (to.Name, FormattableString.Invariant($"{sold.Id}-{to.Kit.Count}"));
            sold.Mark = sold.Id;
            to.Kit.Add(sold);
        }
    }
}
