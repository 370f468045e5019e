using System.Collections.Concurrent;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Register;

namespace ExamDocs.UseCases.Registered;

/// <summary>The records of a register's visits, each read once.</summary>
internal sealed class RememberedRecords(DocumentRegister register)
{
    private readonly ConcurrentDictionary<int, ExaminationRecord> _records = [];

    /// <summary>
    /// True where nobody will ask what was observed and measured: most of a record is that, and of a large register it need not be kept.
    /// </summary>
    public bool WithoutObservations { get; init; }

    /// <summary>Adds the record of a visit that the register does not hold.</summary>
    public void Add(int visit, ExaminationRecord record) => _records[visit] = record;

    /// <summary>Reads a record from bytes that the caller fetched, on any thread; null where it cannot be read.</summary>
    public ExaminationRecord? Read(int visit, byte[] json)
    {
        var record = EmbeddedRecord.Read(json, "register").Record;
        if (record is not null)
            _records[visit] = WithoutObservations ? Shortened(record) : record;
        return record;
    }

    private static ExaminationRecord Shortened(ExaminationRecord record) =>
        record with
        {
            Examinations = [.. record.Examinations.Select(e => e with { Observations = [], Diameters = [], Tests = [] })],
        };

    /// <exception cref="InvalidDataException">It differs from what was stored, or can no longer be read.</exception>
    public ExaminationRecord Of(int visit)
    {
        if (!_records.TryGetValue(visit, out var record))
        {
            _records[visit] = record = EmbeddedRecord.Read(register.Visits.Record(visit), "register").Record
                ?? throw new InvalidDataException(FormattableString.Invariant($"The record of visit {visit} can no longer be read."));
        }
        return record;
    }
}
