using System.Security.Cryptography;
using ExamDocs.Core.Determination;
using ExamDocs.Intake.Json;
using ExamDocs.Register;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// What a visit's record gives differently from an earlier version, of which documents hold only parts. The register keeps it whole; the
/// two are compared once, however many documents ask.
/// </summary>
internal sealed class VisitChanges(DocumentRegister register)
{
    private readonly Dictionary<(string Sha256, DeterminedVisit Now), IReadOnlyList<RecordChange>?> _found = [];

    /// <param name="earlier">A document that holds a part.</param>
    /// <param name="now">The visit as it is now.</param>
    /// <returns>Null where the register does not have the record that the part was cut from.</returns>
    /// <exception cref="InvalidDataException">The register does not hold that version as it was stored.</exception>
    public IReadOnlyList<RecordChange>? Since(EarlierDocument earlier, DeterminedVisit now)
    {
        if (earlier is not { Status.Visit: { } visit, Contents.Record.PartOf: { } part })
            return null;
        if (!_found.TryGetValue((part.Sha256, now), out var changes))
            _found[(part.Sha256, now)] = changes = Since(register.Visits.Record(visit), part.Sha256, now);
        return changes;
    }

    private static IReadOnlyList<RecordChange>? Since(byte[] json, string sha256, DeterminedVisit now) =>
        string.Equals(Convert.ToHexStringLower(SHA256.HashData(json)), sha256, StringComparison.Ordinal)
        && EmbeddedRecord.Read(json, "register").Record is { } record
            ? RecordDifference.Between(record, now.Recorded)
            : null;
}
