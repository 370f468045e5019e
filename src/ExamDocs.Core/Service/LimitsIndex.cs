using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Service;

/// <summary>
/// The maker's limits of a record by what they apply to, so that a thousand items need not each be held against a thousand
/// entries. Capitals and runs of blanks make no difference.
/// </summary>
internal sealed class LimitsIndex
{
    private readonly ILookup<(string Maker, string Model), RowCase<MakersLimits>> _complete;
    private readonly IReadOnlyList<RowCase<MakersLimits>> _incomplete;

    public LimitsIndex(IReadOnlyList<RowCase<MakersLimits>> limits)
    {
        _complete = limits.Where(l => l.Row is { Maker: not null, Model: not null }).ToLookup(l => (Fold(l.Row.Maker!), Fold(l.Row.Model!)));
        _incomplete = [.. limits.Where(l => l.Row.Maker is null || l.Row.Model is null)];
    }

    /// <summary>Entries of the item's maker and model, and where they give a part number, of that part.</summary>
    public List<RowCase<MakersLimits>> Of(Item item) => item is { Maker: { } maker, Model: { } model }
        ? [.. _complete[(Fold(maker), Fold(model))].Where(l => l.Row.PartNumber is null || Same(l.Row.PartNumber, item.PartNumber))]
        : [];

    /// <summary>Entries too incomplete to say that they do not apply to the item.</summary>
    public IEnumerable<RowCase<MakersLimits>> Incomplete(Item item) => _incomplete.Where(l =>
        CouldBe(l.Row.Maker, item.Maker) && CouldBe(l.Row.Model, item.Model) && CouldBe(l.Row.PartNumber, item.PartNumber));

    private static bool CouldBe(string? stated, string? actual) => stated is null || actual is null || Same(stated, actual);

    private static bool Same(string one, string? other) => other is not null && string.Equals(Fold(one), Fold(other), StringComparison.Ordinal);

    /// <summary>Upper case by the invariant culture: what compares equal without regard to case is folded alike.</summary>
    private static string Fold(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).ToUpperInvariant();
}
