using System.Text;
using System.Text.Json.Nodes;

namespace ExamDocs.Benchmarks;

/// <summary>A record several times over, every identity with a number of its own.</summary>
internal static class RepeatedRecord
{
    private static readonly (string List, string[] Ids)[] Lists =
    [
        ("items", ["id", "fittedTo", "serial"]),
        ("examinations", ["item"]),
        ("renewals", ["item", "removedPart", "fittedPart"]),
        ("remedies", ["item"]),
        ("releases", ["item"]),
        ("disposals", ["item"]),
    ];

    /// <summary>Changes the record, and returns it as a file.</summary>
    public static byte[] Of(JsonObject record, int times)
    {
        foreach (var (list, ids) in Lists)
        {
            if (record[list] is not JsonArray rows)
                continue;
            var once = rows.ToList();
            foreach (var copy in Enumerable.Range(1, times - 1))
            {
                foreach (var row in once.Select(r => r!.DeepClone().AsObject()))
                {
                    foreach (var id in ids.Where(row.ContainsKey))
                        row[id] = $"{row[id]}-{copy}";
                    rows.Add(row);
                }
            }
        }
        return Encoding.UTF8.GetBytes(record.ToJsonString());
    }
}
