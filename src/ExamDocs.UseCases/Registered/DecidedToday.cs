using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Decides visits of a register again with all that it knows today, each once: for what a decision works out and no register keeps, as
/// the end of service and where diameters are heading. What was decided stands.
/// </summary>
internal sealed class DecidedToday(DocumentRegister register, LocalDate today)
{
    private readonly RegisterKnowledge _known = new(register);
    private readonly Dictionary<int, DeterminedVisit?> _visits = [];

    /// <summary>The item of an entry; null where its record has no row for it, or can no longer be read.</summary>
    public DeterminedItem? Of(ItemEntry entry)
    {
        if (!_visits.TryGetValue(entry.Visit.Visit, out var visit))
            _visits[entry.Visit.Visit] = visit = Decided(entry);
        return visit?.Items.FirstOrDefault(i => string.Equals(i.Item.Id, entry.Item.Id, StringComparison.Ordinal));
    }

    private DeterminedVisit? Decided(ItemEntry entry)
    {
        var read = EmbeddedRecord.Read(register.Visits.Record(entry.Visit.Visit), "register");
        return read.Record is not { } record || RecordSizeLimit.Of(record, read.Findings) is not null
            ? null
            : DetermineVisits.Of([new VisitToDecide(record, read.Findings, entry.Visit.Sha256)], _known, today)[0].Visit;
    }
}
