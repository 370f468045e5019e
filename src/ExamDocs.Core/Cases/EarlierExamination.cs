using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Cases;

/// <summary>An examination of an item from before the one that decides: of the record itself, or of a store.</summary>
/// <param name="On">The day examined.</param>
/// <param name="Examination">As it was recorded.</param>
public sealed record EarlierExamination(LocalDate On, Examination Examination)
{
    /// <summary>What a store remembers of it; null where it stands in the record itself.</summary>
    public PastExamination? Stored { get; init; }

    /// <summary>The event that called for it; null where none did.</summary>
    public EventInService? EventInService => EventInService.Of(Examination, On);

    /// <summary>
    /// Of the record, then of the store, oldest first. What the record itself holds of a day counts once, in the record's
    /// own words; what a store knows of the day examined, or of a later one, is not from before.
    /// </summary>
    internal static IReadOnlyList<EarlierExamination> Of(ItemCase item)
    {
        var ofRecord = item.Earlier.Where(e => e.On is not null).Select(e => new EarlierExamination(e.On!.Value, e.Examination)).ToList();
        var recorded = ofRecord.Select(e => e.On).ToHashSet();
        var end = item.ExaminedOn ?? item.Context.Record.Visit.ExaminedOn;
        var stored = item
            .Context.PastExaminationsOf(item.ItemId)
            .Where(p => p.On < end && !recorded.Contains(p.On))
            .OrderBy(p => p.On)
            .ThenBy(p => p.Document, StringComparer.Ordinal)
            .ThenBy(p => InWords(p), StringComparer.Ordinal)
            .Select(p => new EarlierExamination(p.On, p.Examination) { Stored = p });
        return [.. ofRecord.Concat(stored).OrderBy(e => e.On)];
    }

    /// <summary>All that is taken from an earlier examination, so that two of one day stand in an order of their own.</summary>
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
