using System.Data.Common;
using System.Text.Json;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Rows;

/// <summary>
/// Visits that name an item under one of some keys, or an item that shares a key with such a one, and so on. Each round asks
/// with all keys, or all items, that are new to it, so that a few statements do for thousands of items.
/// </summary>
internal sealed class ConnectedVisits
{
    private readonly RegisterDatabase _database;
    private readonly string _counts;
    private readonly object?[] _limits;
    private readonly HashSet<string> _items = new(StringComparer.Ordinal);

    /// <param name="database">Where the keys are.</param>
    /// <param name="upTo">The last visit that counts; null for all.</param>
    /// <param name="origin">The register in whose numbers that is; null for this one.</param>
    public ConnectedVisits(RegisterDatabase database, int? upTo, string? origin)
    {
        _database = database;
        (_counts, _limits) = (upTo, origin) switch
        {
            (null, null) => ("", (object?[])[]),
            ({ } last, null) => (" AND visit <= $2", [last]),
            var (last, from) => (
                " AND visit IN (SELECT visit FROM merged_visit WHERE origin = $2 AND number <= $3)",
                [from, last ?? int.MaxValue]
            ),
        };
    }

    /// <summary>Ids of the items that were found on the way, as they are typed.</summary>
    public IReadOnlyCollection<string> Items => _items;

    /// <returns>Numbers of the visits.</returns>
    public IReadOnlyCollection<int> To(IEnumerable<string> keys)
    {
        var (visits, unnamedVisits, known) = (new HashSet<int>(), new HashSet<int>(), new HashSet<string>(StringComparer.Ordinal));
        var next = keys.Select(VisitRows.Stored).Where(known.Add).ToList();
        while (next.Count > 0)
        {
            var found = Ask("SELECT DISTINCT item, visit FROM item_key WHERE key", next, row =>
                (Item: row.GetString(0), Visit: row.GetInt32(1))
            );
            visits.UnionWith(found.Select(f => f.Visit));
            // An item without an id is another one in every visit.
            var unnamed = found.Where(f => f.Item.Length == 0).Select(f => f.Visit).Where(unnamedVisits.Add).ToList();
            var named = found.Select(f => f.Item).Where(i => i.Length > 0 && _items.Add(i)).ToList();
            next =
            [
                .. Ask("SELECT DISTINCT key FROM item_key WHERE item", named, row => row.GetString(0)).Where(known.Add),
                .. Ask("SELECT DISTINCT key FROM item_key WHERE item = '' AND visit", unnamed, row => row.GetString(0)).Where(known.Add),
            ];
        }
        return visits;
    }

    private List<T> Ask<T>(string question, IReadOnlyList<string> of, Func<DbDataReader, T> read) =>
        of.Count == 0
            ? []
            : _database.Connection.Rows(
                read,
                $"{question} {_database.AmongTexts("$1")}{_counts}",
                [JsonSerializer.Serialize(of), .. _limits]
            );

    private List<T> Ask<T>(string question, IReadOnlyList<int> of, Func<DbDataReader, T> read) =>
        of.Count == 0
            ? []
            : _database.Connection.Rows(
                read,
                $"{question} {_database.AmongNumbers("$1")}{_counts}",
                [JsonSerializer.Serialize(of), .. _limits]
            );
}
