using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Recording;

/// <summary>What was found at an item's latest examination before, as far as the record has it.</summary>
public sealed class LastFound
{
    private readonly Examination _examination;

    private LastFound(Examination examination) => _examination = examination;

    public LocalDate On => _examination.ExaminedOn!.Value;

    public IReadOnlyList<DiameterStation> Diameters => _examination.Diameters;

    /// <param name="record">The record of the visit; its examinations with a day of their own are earlier ones.</param>
    /// <param name="item">Id of the item.</param>
    /// <returns>Null where nothing is known.</returns>
    public static LastFound? Of(ExaminationRecord record, string? item)
    {
        ArgumentNullException.ThrowIfNull(record);
        var last = record
            .Examinations.Where(e => item is not null && string.Equals(e.Item, item, StringComparison.Ordinal) && e.ExaminedOn is not null)
            .MaxBy(e => e.ExaminedOn);
        return last is null ? null : new LastFound(last);
    }

    /// <summary>Every answer to a criterion, with its note.</summary>
    public IEnumerable<Observation> Answers(string criterion) =>
        _examination.Observations.Where(o => string.Equals(o.Criterion, criterion, StringComparison.Ordinal));

    /// <summary>The defects that were entered for a criterion.</summary>
    public IEnumerable<Defect> Defects(string criterion) =>
        _examination.Defects.Where(d => string.Equals(d.Criterion, criterion, StringComparison.Ordinal));
}
