using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Recalls;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Recalling;

/// <summary>
/// What a safety notice says of the items of a register: each is no better than what is fitted to it, and open where it may be another
/// that is named.
/// </summary>
internal sealed class RecallSweep
{
    private readonly IReadOnlyList<SweptThing> _things;
    private readonly RecallAnswer[] _answers;
    private readonly IReadOnlyList<RecallVerdict> _alone;
    private readonly ILookup<string, int> _byId;
    private readonly Dictionary<ThingOnRecord, int> _places;
    private readonly IReadOnlyList<(UndecidedItem Item, RecallAnswer Answer)> _undecided;

    /// <param name="notice">The notice.</param>
    /// <param name="things">The items that visits decided about.</param>
    /// <param name="undecided">What records name besides.</param>
    public RecallSweep(SafetyNotice notice, IReadOnlyList<SweptThing> things, IReadOnlyList<UndecidedItem> undecided)
    {
        (_things, _answers) = (things, [.. things.Select(t => RecallCheck.Of(notice, t.Rows))]);
        _alone = [.. _answers.Select(a => a.Verdict)];
        _undecided = [.. undecided.Select(u => (u, RecallCheck.Of(notice, [u.Item])))];
        _places = things.Index().ToDictionary(t => t.Item.Thing, t => t.Index);
        _byId = things
            .Index()
            .SelectMany(t =>
                t.Item.Thing.Entries.SelectMany(e => Folded.Keys(e.Item.Id)).Distinct(StringComparer.Ordinal).Select(key => (key, t.Index))
            )
            .ToLookup(t => t.key, t => t.Index, StringComparer.Ordinal);
        AddUndecidedParts();
        AddPartsAndLikes();
    }

    /// <summary>Each item, what is said of it, and what is said of it by its own markings.</summary>
    public IEnumerable<(SweptThing Thing, RecallAnswer Answer, RecallVerdict Alone)> Things => _things.Zip(_answers, _alone);

    public IEnumerable<(UndecidedItem Item, RecallAnswer Answer)> Undecided => _undecided;

    private void AddUndecidedParts()
    {
        foreach (var (part, answer) in _undecided)
        {
            foreach (var at in part.On.SelectMany(id => Named(id, part.Owner)).Distinct())
                Worsen(at, WithPart(part.Item.Id, answer.Verdict));
        }
    }

    private void AddPartsAndLikes()
    {
        var parts = _things
            .Index()
            .Select(t =>
                t.Item.Thing.Known.Parts.SelectMany(p =>
                        Named(p.Id, t.Item.Thing.Owner).Where(at => at != t.Index).Select(at => (p.Id, at))
                    )
                    .Distinct()
                    .ToList()
            )
            .ToList();
        for (var changed = true; changed; )
        {
            changed = false;
            foreach (var (at, thing) in _things.Index())
            {
                foreach (var (id, part) in parts[at])
                    changed |= Worsen(at, WithPart(id, _answers[part].Verdict));
                changed |= Worsen(at, Like(thing));
            }
        }
    }

    /// <summary>Things under an id that are, or may be, of one owner.</summary>
    private IEnumerable<int> Named(string? id, string? owner) =>
        Folded.Keys(id).SelectMany(key => _byId[key]).Distinct().Where(at => FirmName.MayBeSame(_things[at].Thing.Owner, owner));

    private bool Worsen(int at, RecallAnswer? answer)
    {
        if (answer is null || answer.Verdict <= _answers[at].Verdict)
            return false;
        _answers[at] = answer;
        return true;
    }

    private static RecallAnswer? WithPart(string? id, RecallVerdict verdict)
    {
        var part = string.IsNullOrWhiteSpace(id) ? (Message)$"(no id)" : Message.AsIs(id);
        return verdict switch
        {
            RecallVerdict.Affected => new(verdict, [$"{part}, which is fitted to it, is affected"]),
            RecallVerdict.CannotTell => new(verdict, [$"{part}, which is fitted to it, may be affected"]),
            _ => null,
        };
    }

    private RecallAnswer? Like(SweptThing thing) =>
        thing.Alike.FirstOrDefault(a => _places.TryGetValue(a, out var at) && _answers[at].Verdict > RecallVerdict.NotAffected) is { } like
            ? new(RecallVerdict.CannotTell, [$"it may be the same item as {_things[_places[like]].Shown.Id}, which is affected or may be"])
            : null;
}
