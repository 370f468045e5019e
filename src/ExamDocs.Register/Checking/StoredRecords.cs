using System.Text.Json;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>The records of some visits, as many at once as there is room for.</summary>
/// <param name="database">Where they are.</param>
/// <param name="visits">Their numbers.</param>
internal sealed class StoredRecords(RegisterDatabase database, IReadOnlyCollection<int> visits)
{
    /// <summary>Bytes that are held at once, unless one record alone is longer.</summary>
    private const long Room = 4 << 20;

    /// <summary>All of the visits, in their order; a record is null where the visit's row is gone.</summary>
    public IEnumerable<IReadOnlyList<(int Visit, byte[]? Record)>> Lots()
    {
        var lengths = database
            .Connection.Rows(
                row => (Visit: row.GetInt32(0), Length: row.GetInt64(1)),
                $"SELECT visit, length(record) FROM visit WHERE visit {database.AmongNumbers("$1")}",
                JsonSerializer.Serialize(visits)
            )
            .ToDictionary(r => r.Visit, r => r.Length);
        List<int> lot = [];
        var held = 0L;
        foreach (var visit in visits)
        {
            held += lengths.GetValueOrDefault(visit);
            if (held > Room && lot.Count > 0)
            {
                yield return Read(lot);
                (lot, held) = ([], lengths.GetValueOrDefault(visit));
            }
            lot.Add(visit);
        }
        yield return Read(lot);
    }

    private IReadOnlyList<(int Visit, byte[]? Record)> Read(List<int> lot)
    {
        var records = database
            .Connection.Rows(
                row => (Visit: row.GetInt32(0), Record: row.GetFieldValue<byte[]>(1)),
                $"SELECT visit, record FROM visit WHERE visit {database.AmongNumbers("$1")}",
                JsonSerializer.Serialize(lot)
            )
            .ToDictionary(r => r.Visit, r => r.Record);
        return [.. lot.Select(v => (v, records.GetValueOrDefault(v)))];
    }
}
