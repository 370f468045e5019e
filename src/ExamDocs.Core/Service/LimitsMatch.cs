using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Service;

/// <summary>
/// The maker's limits that apply to an item: by maker and model, and by part number where an entry gives one. The most
/// specific applies. Capitals and runs of blanks make no difference.
/// </summary>
public sealed class LimitsMatch
{
    private LimitsMatch(IReadOnlyList<RowCase<MakersLimits>> applying, IReadOnlyList<RowCase<MakersLimits>> touching) =>
        (All, Touching) = (applying, touching);

    /// <summary>The entry that applies; of several equally specific ones the first (and that is an error).</summary>
    public MakersLimits? Applying => All.Count == 0 ? null : All[0].Row;

    public bool IsTie => All.Count > 1;

    /// <summary>Every equally specific entry.</summary>
    public IReadOnlyList<RowCase<MakersLimits>> All { get; }

    /// <summary>
    /// The entries whose errors reach the item: those that apply, and those too incomplete to say that they do not.
    /// </summary>
    public IReadOnlyList<RowCase<MakersLimits>> Touching { get; }

    internal static LimitsMatch For(Item item, LimitsIndex limits)
    {
        var matching = limits.Of(item);
        var byPart = matching.Where(l => l.Row.PartNumber is not null).ToList();
        var applying = byPart.Count > 0 ? byPart : matching;
        return new LimitsMatch(applying, [.. applying, .. limits.Incomplete(item)]);
    }
}
