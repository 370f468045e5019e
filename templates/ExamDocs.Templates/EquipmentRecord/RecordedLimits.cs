using ExamDocs.Core.Records;
using ExamDocs.Templates.EquipmentRecord.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.EquipmentRecord;

/// <summary>The maker's limits as lines of label and value. Only what is recorded has a line: nothing is assumed.</summary>
internal static class RecordedLimits
{
    public static IReadOnlyList<(string Label, string Value)> Of(MakersLimits limits)
    {
        var words = EquipmentRecordPhrases.Current;
        (string Label, string? Value)[] lines =
        [
            (words.MaxUse, limits.MaxUseYears is { } use ? words.Years(use) : null),
            (words.MaxStorage, limits.MaxStorageYears is { } storage ? words.Years(storage) : null),
            (words.MaxAge, limits.MaxAgeYears is { } age ? words.Years(age) : null),
            (words.NoTimeLimit, limits.NoLimit ? words.MakerSaysNone : null),
            (words.Unobtainable, limits.Unobtainable is { } gone ? words.Sought(gone.Sought, gone.UseUntil) : null),
            (words.MaxCleanings, limits.MaxCleanings is { } times ? words.Times(times) : null),
            (words.EventEnds, limits.EventEndsService ? words.EventEndsService : null),
            (words.Interval, limits.IntervalMonths is { } months ? words.Months(months) : null),
            (
                words.NominalDiameter,
                limits.NominalDiameterMm is { } nominal ? words.Diameter(nominal, limits.DiameterTolerancePercent) : null
            ),
            (words.PermittedParts, limits.PermittedParts is { } parts ? PartsOf(parts) : null),
            (words.MinTail, limits.MinTailMm is { } tail ? words.Millimetres(tail) : null),
            (words.Retying, limits.Retying is { } who ? words.MayRetie(who) : null),
        ];
        return [.. lines.Where(l => l.Value is not null).Select(l => (l.Label, l.Value!))];
    }

    /// <summary>None where several lists may apply and no part is on all of them.</summary>
    private static string PartsOf(IReadOnlyList<string> parts) => parts.Count == 0 ? Phrases.Common.None : string.Join(", ", parts);
}
