using ExamDocs.Core.Records;

namespace ExamDocs.Core.Identity;

/// <summary>Finds the visits whose items may be those of a record: they share a key, directly or by way of other items.</summary>
public sealed class KeyIndex
{
    private readonly Dictionary<string, List<(int Visit, string Item)>> _byKey = new(StringComparer.Ordinal);
    private readonly Dictionary<(int Visit, string Item), List<string>> _byItem = [];

    /// <summary>Adds a visit under a number that the caller chooses.</summary>
    public void Add(int visit, ExaminationRecord record)
    {
        foreach (var (item, key) in ItemKeys.Of(record))
        {
            Of(_byKey, key).Add((visit, item));
            Of(_byItem, (visit, item)).Add(key);
        }
    }

    /// <summary>The numbers of those visits, ascending; with the record's own where it was added.</summary>
    public IReadOnlyList<int> Touching(ExaminationRecord record)
    {
        var open = new Stack<string>(ItemKeys.Of(record).Select(k => k.Key));
        var (keys, items) = (new HashSet<string>(StringComparer.Ordinal), new HashSet<(int Visit, string Item)>());
        while (open.TryPop(out var key))
        {
            if (!keys.Add(key) || !_byKey.TryGetValue(key, out var found))
                continue;
            foreach (var item in found.Where(items.Add))
            {
                foreach (var further in _byItem[item])
                    open.Push(further);
            }
        }
        return [.. items.Select(i => i.Visit).Distinct().Order()];
    }

    private static List<TValue> Of<TKey, TValue>(Dictionary<TKey, List<TValue>> index, TKey key)
        where TKey : notnull
    {
        if (!index.TryGetValue(key, out var list))
            index[key] = list = [];
        return list;
    }
}
