using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>Somebody whose examinations a pack rests on.</summary>
/// <param name="Name">As recorded last; the id where no name is.</param>
/// <param name="Qualifications">As recorded last.</param>
/// <param name="Keys">What a file about this person may be called: the name, and each id that no other examiner has.</param>
internal sealed record PackedExaminer(string Name, string? Qualifications, IReadOnlyList<string> Keys)
{
    /// <summary>Those who examined for the latest decision about each item, and for each document enclosed; by name.</summary>
    public static IReadOnlyList<PackedExaminer> Of(IReadOnlyList<PackedThing> things)
    {
        var people = things
            .SelectMany(t =>
                t.Thing.Counting.Where(e => e == t.Decided || t.Documents.Any(d => d.Visit == e.Visit.Visit))
                    .SelectMany(e => PackedThing.ExaminationsIn(e).Select(x => (Entry: e, x.Examiner)))
            )
            .Where(x => !string.IsNullOrWhiteSpace(x.Examiner))
            .Select(x => (x.Entry, Id: x.Examiner!, Person: PersonOf(x.Entry, x.Examiner!)))
            .GroupBy(x => FirmName.Fold(NameOf(x.Id, x.Person)), StringComparer.Ordinal)
            .Select(g =>
                (
                    Latest: g.MaxBy(x => (x.Entry.Day, x.Entry.Visit.Visit)),
                    Ids: g.Select(x => x.Id).Distinct(StringComparer.Ordinal).ToList()
                )
            )
            .ToList();
        return
        [
            .. people
                .Select(p => new PackedExaminer(
                    NameOf(p.Latest.Id, p.Latest.Person),
                    p.Latest.Person?.Qualifications,
                    [
                        NameOf(p.Latest.Id, p.Latest.Person),
                        .. p.Ids.Where(id => people.TrueForAll(other => other == p || !other.Ids.Contains(id, StringComparer.Ordinal))),
                    ]
                ))
                .OrderBy(p => p.Name, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static string NameOf(string id, Person? person) => string.IsNullOrWhiteSpace(person?.Name) ? id : person.Name;

    private static Person? PersonOf(ItemEntry entry, string id) =>
        entry.Record.People.FirstOrDefault(p => string.Equals(p.Id, id, StringComparison.Ordinal));
}
