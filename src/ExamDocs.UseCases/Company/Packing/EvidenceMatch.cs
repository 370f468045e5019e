using ExamDocs.Core.Identity;
using ExamDocs.Templates.AuditPack;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>What a file is about.</summary>
/// <param name="Kind">Other where nothing matches.</param>
/// <param name="About">Names of examiners or ids of items, each once.</param>
/// <param name="Things">The items.</param>
internal sealed record EvidenceAbout(PackEvidenceKind Kind, IReadOnlyList<string> About, IReadOnlyList<PackedThing> Things)
{
    public static EvidenceAbout Nothing { get; } = new(PackEvidenceKind.Other, [], []);
}

/// <summary>
/// Tells from a file's name what it is about: it begins with the id or the name of an examiner, or with the id of an item or its model.
/// Letter case, blanks and signs make no difference. The longest match counts, also one that the pack is not about; a name that could
/// mean several tells none.
/// </summary>
internal sealed class EvidenceMatch
{
    private readonly ILookup<string, Key> _keys;

    /// <param name="examiners">Ids and name of each.</param>
    /// <param name="things">The items of the pack.</param>
    /// <param name="others">Ids and names of everything else that the register knows.</param>
    public EvidenceMatch(IReadOnlyList<PackedExaminer> examiners, IReadOnlyList<PackedThing> things, IEnumerable<string?> others)
    {
        _keys = examiners
            .SelectMany(e => e.Keys.Select(k => new Key(k, string.Equals(k, e.Name, StringComparison.Ordinal), e, null)))
            .Concat(things.SelectMany(KeysOf))
            .Concat(others.Distinct(StringComparer.Ordinal).Select(o => new Key(o, false, null, null)))
            .Where(k => k.Words.Of.Length > 0)
            .ToLookup(k => k.Words.Of, StringComparer.Ordinal);
    }

    public EvidenceAbout Of(string fileName)
    {
        var name = new NameWords(Path.GetFileNameWithoutExtension(fileName));
        foreach (var begin in name.Beginnings)
        {
            var found = _keys[begin.Words].Where(k => name.EndsAt(begin.Count, k.IsName)).ToList();
            if (found.Count > 0)
                return About(found.FindAll(k => !k.IsOutside));
        }
        return EvidenceAbout.Nothing;
    }

    private static IEnumerable<Key> KeysOf(PackedThing thing)
    {
        var (id, item) = (thing.Shown.Id, thing.Shown.Item);
        return [new(id, false, null, thing), new(item.Model, true, null, thing), new($"{item.Maker} {item.Model}", true, null, thing)];
    }

    private static EvidenceAbout About(List<Key> found)
    {
        var examiners = found.Select(k => k.Examiner).OfType<PackedExaminer>().Distinct().ToList();
        var things = found.Select(k => k.Thing).OfType<PackedThing>().Distinct().ToList();
        return (examiners, things) switch
        {
            ([var one], []) => new(PackEvidenceKind.Competence, [one.Name], []),
            ([], [_, ..]) when things is [_] || IsOneModel(found) => new(
                PackEvidenceKind.Equipment,
                [.. things.Select(t => t.Shown.Id).Distinct(StringComparer.Ordinal)],
                things
            ),
            _ => EvidenceAbout.Nothing,
        };
    }

    /// <summary>All of one maker, by the name of the model and not by an id.</summary>
    private static bool IsOneModel(List<Key> found) =>
        found.TrueForAll(k => k.IsName && FirmName.MayBeSame(k.Thing!.Shown.Item.Maker, found[0].Thing!.Shown.Item.Maker));

    /// <summary>What a file's name may begin with.</summary>
    /// <param name="Typed">As recorded.</param>
    /// <param name="IsName">A name, not an id.</param>
    /// <param name="Examiner">Whose it is.</param>
    /// <param name="Thing">What bears it; with no examiner either, something that the pack is not about.</param>
    private sealed record Key(string? Typed, bool IsName, PackedExaminer? Examiner, PackedThing? Thing)
    {
        public NameWords Words { get; } = new(Typed);

        public bool IsOutside => Examiner is null && Thing is null;
    }
}
