using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Register;

namespace ExamDocs.UseCases.Registered;

/// <summary>The records of a register's visits, each read once.</summary>
internal sealed class RememberedRecords(DocumentRegister register)
{
    private readonly Dictionary<int, ExaminationRecord> _records = [];

    /// <summary>Adds the record of a visit that the register does not hold.</summary>
    public void Add(int visit, ExaminationRecord record) => _records.Add(visit, record);

    /// <summary>Reads a record from bytes that the caller fetched; null where it cannot be read.</summary>
    public ExaminationRecord? Read(int visit, byte[] json)
    {
        var record = EmbeddedRecord.Read(json, "register").Record;
        return record is null ? null : _records[visit] = record;
    }

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
