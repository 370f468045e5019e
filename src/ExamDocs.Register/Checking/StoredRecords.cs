using System.Text.Json;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>The records of some visits: those asked for next are read with the one that is asked for, as far as there is room.</summary>
/// <param name="database">Where they are.</param>
/// <param name="visits">Their numbers, as a JSON array.</param>
internal sealed class StoredRecords(RegisterDatabase database, string visits)
{
    /// <summary>Bytes that are held at once, unless one record alone is longer.</summary>
    private const long Room = 4 << 20;

    private Dictionary<int, byte[]> _held = [];
    private List<(int Visit, long Length)>? _lengths;

    /// <param name="visit">One of them that is there.</param>
    public byte[] Of(int visit)
    {
        if (!_held.ContainsKey(visit))
        {
            _lengths ??= database.Connection.Rows(
                row => (row.GetInt32(0), row.GetInt64(1)),
                $"SELECT visit, length(record) FROM visit WHERE visit {database.AmongNumbers("$1")} ORDER BY visit",
                visits
            );
            var room = Room;
            var some = _lengths
                .Where(l => l.Visit >= visit)
                .TakeWhile(l => (room -= l.Length) >= 0 || l.Visit == visit)
                .Select(l => l.Visit)
                .ToList();
            _held = database
                .Connection.Rows(
                    row => (Visit: row.GetInt32(0), Record: row.GetFieldValue<byte[]>(1)),
                    $"SELECT visit, record FROM visit WHERE visit {database.AmongNumbers("$1")}",
                    JsonSerializer.Serialize(some)
                )
                .ToDictionary(r => r.Visit, r => r.Record);
        }
        return _held[visit];
    }
}
