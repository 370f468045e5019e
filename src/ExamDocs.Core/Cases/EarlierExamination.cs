using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Cases;

/// <summary>An examination of an item before the one that decides, from the record itself or from a store.</summary>
/// <param name="On">The day examined.</param>
/// <param name="Examination">As it was recorded.</param>
public sealed record EarlierExamination(LocalDate On, Examination Examination)
{
    /// <summary>The examination as a store has it; null where it is in the record itself.</summary>
    public PastExamination? Stored { get; init; }

    /// <summary>The event that called for it; null where none did.</summary>
    public EventInService? EventInService => EventInService.Of(Examination, On);

    /// <summary>
    /// Examinations of the record and of the store, oldest first. Where both have a day, only the record's counts. What a store has
    /// of the day examined or later is left out: it is not from before.
    /// </summary>
    internal static IReadOnlyList<EarlierExamination> Of(ItemCase item)
    {
        var known = item.Context.PastExaminationsOf(item.ItemId).ToList();
        if (known.Count == 0 && item.Earlier.Count == 0)
            return [];
        var ofRecord = item.Earlier.Where(e => e.On is not null).Select(e => new EarlierExamination(e.On!.Value, e.Examination)).ToList();
        var recorded = ofRecord.Select(e => e.On).ToHashSet();
        var end = item.ExaminedOn ?? item.Context.Record.Visit.ExaminedOn;
        var stored = known
            .Where(p => p.On < end && !recorded.Contains(p.On))
            .OrderBy(p => p.On)
            .ThenBy(p => p.Document, StringComparer.Ordinal)
            .ThenBy(p => InWords(p), StringComparer.Ordinal)
            .Select(p => new EarlierExamination(p.On, p.Examination) { Stored = p });
        return [.. ofRecord.Concat(stored).OrderBy(e => e.On)];
    }

    /// <summary>The content as text: it gives two examinations of one day the same order, whatever order the store returns.</summary>
    private static string InWords(PastExamination past) =>
        string.Join(
            '\n',
            [
                $"{past.Examination.Conclusion} {past.Examination.Event}",
                .. past.Examination.Diameters.Select(s =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{s.PositionMm}: {string.Join(' ', s.ReadingsMm.Select(r => r?.ToString(CultureInfo.InvariantCulture)))}"
                    )
                ),
                .. past.Examination.Defects.Select(d => d.ToString()),
                .. past.Remedies.Select(r => r.ToString()),
                .. past.Renewals.Select(r => r.ToString()),
            ]
        );
}
