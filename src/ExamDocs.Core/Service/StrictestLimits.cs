using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Service;

/// <summary>
/// Merges several entries of limits into one with the strictest value of each limit. Where nobody knows which entry is for an item,
/// it is judged no better than by any of them.
/// </summary>
internal static class StrictestLimits
{
    /// <summary>A single entry as recorded; several merged, without a source of their own; null where there is none.</summary>
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
    /// The entry whose band lies within the bands of all others that have one. Where bands only overlap, or lie apart, there is
    /// none: no one nominal diameter would mean them all. W7 then checks a mean against each of them.
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
