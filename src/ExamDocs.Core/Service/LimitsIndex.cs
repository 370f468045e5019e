using ExamDocs.Core.Records;

namespace ExamDocs.Core.Service;

/// <summary>
/// The maker's limits of a record by maker and model, so that a thousand items need not each be compared with a thousand entries.
/// </summary>
internal sealed class LimitsIndex
{
    private readonly ILookup<(string Maker, string Model), MakersLimits> _complete;
    private readonly IReadOnlyList<MakersLimits> _incomplete;

    public LimitsIndex(IReadOnlyList<MakersLimits> limits)
    {
        _complete = limits.Where(l => l is { Maker: not null, Model: not null }).ToLookup(l => Key(l.Maker!, l.Model!));
        _incomplete = [.. limits.Where(l => l.Maker is null || l.Model is null)];
    }

    /// <summary>The key that all entries of one maker and model share.</summary>
    public static (string Maker, string Model) Key(string maker, string model) =>
        (LimitsSpelling.Folded(maker), LimitsSpelling.Folded(model));

    /// <summary>Entries of the item's maker and model, whatever their part numbers.</summary>
    public List<MakersLimits> Of(Item item) => item is { Maker: { } maker, Model: { } model } ? [.. _complete[Key(maker, model)]] : [];

    /// <summary>Entries without maker or model that may apply to the item, because nothing in them says otherwise.</summary>
    public IEnumerable<MakersLimits> Incomplete(Item item) =>
        _incomplete.Where(l => CouldBe(l.Maker, item.Maker) && CouldBe(l.Model, item.Model) && CouldBe(l.PartNumber, item.PartNumber));

    private static bool CouldBe(string? stated, string? actual) =>
        stated is null || actual is null || LimitsSpelling.AreSame(stated, actual);
}
