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
    private readonly SweptIndex _index;
    private readonly IReadOnlyList<IReadOnlyList<int>> _parts;

    /// <summary>By the place of a whole, the parts of another owner that say they are on it.</summary>
    private readonly ILookup<int, int> _hired;
    private readonly IReadOnlyList<(UndecidedItem Item, RecallAnswer Answer)> _undecided;

    /// <param name="notice">The notice.</param>
    /// <param name="things">The items that visits decided about.</param>
    /// <param name="undecided">What records name besides.</param>
    public RecallSweep(SafetyNotice notice, IReadOnlyList<SweptThing> things, IReadOnlyList<UndecidedItem> undecided)
    {
        (_things, _answers) = (things, [.. things.Select(t => RecallCheck.Of(notice, t.Rows))]);
        _alone = [.. _answers.Select(a => a.Verdict)];
        _undecided = [.. undecided.Select(u => (u, RecallCheck.Of(notice, [u.Item])))];
        _index = new SweptIndex(things);
        _hired = things
            .Index()
            .SelectMany(t => _index.OfAnotherOwner(t.Item).Select(whole => (whole, t.Index)))
            .ToLookup(h => h.whole, h => h.Index);
        _parts = [.. things.Index().Select(t => PartsOf(t.Item, t.Index))];
        AddUndecidedParts();
        AddPartsAndLikes();
    }

    /// <summary>Each item, what is said of it, what is said of it by its own markings, and the places of what is fitted to it.</summary>
    public IEnumerable<(SweptThing Thing, RecallAnswer Answer, RecallVerdict Alone, IReadOnlyList<int> Parts)> Things =>
        _things.Select((thing, at) => (thing, _answers[at], _alone[at], _parts[at]));

    public IEnumerable<(UndecidedItem Item, RecallAnswer Answer)> Undecided => _undecided;

    private void AddUndecidedParts()
    {
        foreach (var (part, answer) in _undecided)
        {
            foreach (var at in part.On.SelectMany(id => _index.WithId(id, part.Owner)).Distinct())
                Worsen(at, WithPart(part.Item.Id, answer.Verdict));
        }
    }

    private void AddPartsAndLikes()
    {
        for (var changed = true; changed; )
        {
            changed = false;
            foreach (var (at, thing) in _things.Index())
            {
                foreach (var part in _parts[at])
                    changed |= Worsen(at, WithPart(_things[part].Shown.Id, _answers[part].Verdict));
                changed |= Worsen(at, Like(thing));
            }
        }
    }

    private IReadOnlyList<int> PartsOf(SweptThing whole, int at) =>
        [
            .. whole
                .Thing.Known.Parts.SelectMany(p => _index.WithId(p.Id, whole.Thing.Owner))
                .Concat(_hired[at])
                .Where(part => part != at)
                .Distinct(),
        ];

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
        thing.Alike.Select(_index.PlaceOf).FirstOrDefault(at => at is { } of && _answers[of].Verdict > RecallVerdict.NotAffected)
            is { } like
            ? new(RecallVerdict.CannotTell, [$"it may be the same item as {_things[like].Shown.Id}, which is affected or may be"])
            : null;
}
