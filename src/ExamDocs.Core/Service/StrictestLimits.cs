using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Service;

/// <summary>
/// Several entries of limits as one: each limit by itself, the strictest. An item of which it is not known to which entry it
/// belongs is judged no better than by any of them.
/// </summary>
internal static class StrictestLimits
{
    /// <summary>One entry stays as it is recorded; null where there is none. What is made of several has no single source.</summary>
    public static MakersLimits? Of(IReadOnlyList<MakersLimits> entries) =>
        entries switch
        {
            [] => null,
            [var only] => only,
            _ => Merged(entries),
        };

    private static MakersLimits Merged(IReadOnlyList<MakersLimits> entries) =>
        new()
        {
            Maker = entries[0].Maker,
            Model = entries[0].Model,
            MaxUseYears = entries.Min(l => l.MaxUseYears),
            MaxStorageYears = entries.Min(l => l.MaxStorageYears),
            MaxAgeYears = entries.Min(l => l.MaxAgeYears),
            MaxCleanings = entries.Min(l => l.MaxCleanings),
            EventEndsService = entries.Any(l => l.EventEndsService),
            IntervalMonths = entries.Min(l => l.IntervalMonths),
            NoLimit = entries.All(l => l.NoLimit),
            Unobtainable = entries
                .Select(l => l.Unobtainable)
                .OfType<Unobtainable>()
                .OrderBy(u => u.UseUntil is null)
                .ThenBy(u => u.UseUntil)
                .FirstOrDefault(),
            NominalDiameterMm = NarrowestBand(entries)?.NominalDiameterMm,
            DiameterTolerancePercent = NarrowestBand(entries)?.DiameterTolerancePercent,
            PermittedParts = PermittedByAll(entries),
            MinTailMm = entries.Max(l => l.MinTailMm),
            Retying = entries.Min(l => l.Retying),
        };

    /// <summary>
    /// The entry whose band lies within the bands of all others that have one. Bands that only overlap, or lie apart, have no
    /// such entry: no nominal diameter stands for them all, and a mean must lie within each.
    /// </summary>
    public static MakersLimits? NarrowestBand(IReadOnlyList<MakersLimits> entries)
    {
        var banded = entries.Where(l => DiameterBand.Of(l) is not null).ToList();
        return banded.Count == 0
            ? entries.FirstOrDefault(l => l.NominalDiameterMm is not null)
            : banded.Find(l => banded.TrueForAll(other => DiameterBand.Of(l)!.Value.IsWithin(DiameterBand.Of(other)!.Value)));
    }

    /// <summary>Null where no entry lists any; empty where no part is on every list.</summary>
    private static IReadOnlyList<string>? PermittedByAll(IReadOnlyList<MakersLimits> entries)
    {
        var lists = entries.Select(l => l.PermittedParts).OfType<IReadOnlyList<string>>().ToList();
        return lists.Count == 0 ? null : [.. lists[0].Where(part => lists.TrueForAll(list => list.Contains(part, StringComparer.Ordinal)))];
    }
}
