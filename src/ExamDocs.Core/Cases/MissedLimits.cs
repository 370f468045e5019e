using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Cases;

/// <summary>
/// Finds entries of limits that an item without limits may have missed by its spelling: their maker or model is nearly the item's
/// own, or the item leaves it out. Names are compared once for all items that share them.
/// </summary>
internal sealed class MissedLimits
{
    private readonly List<Named> _named;
    private readonly Dictionary<(string? Maker, string? Model, string? Category), List<Named>> _meant = [];
    private readonly Lazy<HashSet<RowCase<MakersLimits>>> _all;

    public MissedLimits(RecordContext context)
    {
        var items = context
            .Items.Where(i => i.Item is { Maker: not null, Model: not null })
            .ToLookup(i => LimitsIndex.Key(i.Item.Maker!, i.Item.Model!));
        _named =
        [
            .. context
                .Limits.Where(l => l.Row is { Maker: not null, Model: not null })
                .GroupBy(l => LimitsIndex.Key(l.Row.Maker!, l.Row.Model!))
                .Select(g => new Named(
                    new LimitsName(g.Key.Maker),
                    new LimitsName(g.Key.Model),
                    [.. g],
                    [.. items[g.Key].Select(i => i.Item.Category).Distinct(StringComparer.Ordinal)]
                )),
        ];
        _all = new(() => [.. context.Items.SelectMany(Of)]);
    }

    /// <summary>The entries that an item may have missed; none for an item that has limits.</summary>
    public IReadOnlyList<RowCase<MakersLimits>> Of(ItemCase item) =>
        item.Limits.All.Count > 0 ? [] : [.. MeantBy(item).SelectMany(n => n.Entries).Where(l => Matters(l.Row, item))];

    /// <summary>True where some item may have missed the entry.</summary>
    public bool Contains(RowCase<MakersLimits> limits) => _all.Value.Contains(limits);

    /// <summary>True where the entry could make the outcome of the item worse.</summary>
    private static bool Matters(MakersLimits limits, ItemCase item) =>
        limits
            is { MaxUseYears: not null }
                or { MaxAgeYears: not null }
                or { MaxStorageYears: not null }
                or { MaxCleanings: not null }
                or { IntervalMonths: not null }
                or { EventEndsService: true }
                or { Unobtainable.UseUntil: not null }
        || ForbidsPartOf(limits, item)
        || (DiameterBand.Of(limits) is not null && item.Deciding.Any(e => e.Examination.Diameters.Count > 0));

    private static bool ForbidsPartOf(MakersLimits limits, ItemCase item) => limits.PermittedParts is not null && item.Parts.Count > 0;

    private List<Named> MeantBy(ItemCase item)
    {
        if (item.Item is { Maker: null, Model: null })
            return
            [
                .. _named
                    .Where(n => n.IsFor(item.Item.Category) && n.Entries.Any(l => ForbidsPartOf(l.Row, item)))
                    .Select(n => n with { Entries = [.. n.Entries.Where(l => ForbidsPartOf(l.Row, item))] }),
            ];
        var key = (item.Item.Maker, item.Item.Model, item.Item.Category);
        if (!_meant.TryGetValue(key, out var meant))
            _meant[key] = meant = [.. _named.Where(Meant(item.Item))];
        return meant;
    }

    private static Func<Named, bool> Meant(Item item)
    {
        var (maker, model) = (LimitsName.Of(item.Maker), LimitsName.Of(item.Model));
        return n =>
        {
            var isOther = maker is not null && model is not null && n.Categories.Count > 0;
            return n.IsFor(item.Category)
                && (model is null || n.Model.IsNear(model, isOther))
                && (maker is null || n.Maker.IsNear(maker, isOther));
        };
    }

    /// <summary>The entries of one maker and model, with the categories of the items of that model.</summary>
    private sealed record Named(
        LimitsName Maker,
        LimitsName Model,
        IReadOnlyList<RowCase<MakersLimits>> Entries,
        IReadOnlyList<string?> Categories
    )
    {
        public bool IsFor(string? category) => Categories.Count == 0 || Categories.Contains(category, StringComparer.Ordinal);
    }
}
