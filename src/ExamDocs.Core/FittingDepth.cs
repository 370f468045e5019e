using ExamDocs.Core.Records;

namespace ExamDocs.Core;

/// <summary>How many items a reason may have to pass: from a part to the whole it is on, to the whole that this is on, and so on.</summary>
internal static class FittingDepth
{
    /// <summary>The longest chain from a part upwards, in items; a ring counts once round at most.</summary>
    public static long Of(ExaminationRecord record)
    {
        var wholes = record
            .Items.Select(i => (Part: i.Id, Whole: i.FittedTo))
            .Concat(record.Renewals.Select(r => (Part: r.FittedPart, Whole: r.Item)))
            .Where(f => f.Part is not null && f.Whole is not null)
            .ToLookup(f => f.Part!, f => f.Whole!, StringComparer.Ordinal);
        var depths = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var part in wholes)
            Climb(part.Key, wholes, depths);
        return depths.Count == 0 ? 0 : depths.Values.Max();
    }

    /// <summary>Without recursion: a chain may be longer than the stack is deep.</summary>
    private static void Climb(string start, ILookup<string, string> wholes, Dictionary<string, long> depths)
    {
        var open = new Stack<(string Part, bool WholesDone)>([(start, false)]);
        while (open.TryPop(out var at))
        {
            if (at.WholesDone)
            {
                depths[at.Part] = 1 + wholes[at.Part].Select(w => depths.GetValueOrDefault(w)).DefaultIfEmpty().Max();
            }
            else if (depths.TryAdd(at.Part, 0))
            {
                open.Push((at.Part, true));
                foreach (var whole in wholes[at.Part])
                    open.Push((whole, false));
            }
        }
    }
}
