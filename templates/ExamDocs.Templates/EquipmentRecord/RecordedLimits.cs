using ExamDocs.Core.Records;
using ExamDocs.Templates.Wording;

namespace ExamDocs.Templates.EquipmentRecord;

/// <summary>The maker's limits as lines of label and value. Only what is recorded has a line: nothing is assumed.</summary>
internal static class RecordedLimits
{
    public static IReadOnlyList<(string Label, string Value)> Of(MakersLimits limits)
    {
        var w = Phrases.EquipmentRecord;
        (string Label, string? Value)[] lines =
        [
            (w.MaxUse, limits.MaxUseYears is { } use ? w.Years(use) : null),
            (w.MaxStorage, limits.MaxStorageYears is { } storage ? w.Years(storage) : null),
            (w.MaxAge, limits.MaxAgeYears is { } age ? w.Years(age) : null),
            (w.NoTimeLimit, limits.NoLimit ? w.MakerSaysNone : null),
            (w.Unobtainable, limits.Unobtainable is { } gone ? w.Sought(gone.Sought, gone.UseUntil) : null),
            (w.MaxCleanings, limits.MaxCleanings is { } times ? w.Times(times) : null),
            (w.EventEnds, limits.EventEndsService ? w.EventEndsService : null),
            (w.Interval, limits.IntervalMonths is { } months ? w.Months(months) : null),
            (w.NominalDiameter, limits.NominalDiameterMm is { } nominal ? w.Diameter(nominal, limits.DiameterTolerancePercent) : null),
            (w.PermittedParts, limits.PermittedParts is { } parts ? PartsOf(parts) : null),
            (w.MinTail, limits.MinTailMm is { } tail ? w.Millimetres(tail) : null),
            (w.Retying, limits.Retying is { } who ? w.MayRetie(who) : null),
        ];
        return [.. lines.Where(l => l.Value is not null).Select(l => (l.Label, l.Value!))];
    }

    /// <summary>Empty where of several lists that may apply no part is on every one.</summary>
    private static string PartsOf(IReadOnlyList<string> parts) => parts.Count == 0 ? Phrases.Common.None : string.Join(", ", parts);
}
