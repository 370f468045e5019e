using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Recalling;

/// <summary>The visits of a register that record earlier sweeps of a notice.</summary>
internal sealed class EarlierSweeps
{
    private readonly HashSet<string> _withoutId;

    private EarlierSweeps(IReadOnlyList<ReadVisits> unfinished, HashSet<string> withoutId) =>
        (Unfinished, _withoutId) = (unfinished, withoutId);

    /// <summary>Those of which papers are missing, because the run was interrupted.</summary>
    public IReadOnlyList<ReadVisits> Unfinished { get; }

    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="InvalidDataException">A record is not as it was stored.</exception>
    public static EarlierSweeps In(DocumentRegister register, SafetyNotice notice)
    {
        var key = SweepReference.NoticeOf(notice);
        var visits = register
            .Visits.All()
            .Where(v => string.Equals(RecallVisit.Read(v.Reference)?.Notice, key, StringComparison.Ordinal))
            .Select(v => (v.Visit, Read: new ReadVisits(v.Reference!, EmbeddedRecord.Read(register.Visits.Record(v.Visit), "register"))))
            .ToList();
        if (visits.Count == 0)
            return new([], []);
        if (visits.Exists(v => v.Read.Unreadable is not null))
            throw new InvalidDataException("The record of an earlier sweep can no longer be read.");
        var papers = register.Documents().Where(d => d.Visit is not null).ToLookup(d => d.Visit!.Value);
        var outcomes = register.Visits.Outcomes().ToLookup(o => o.Visit.Visit, o => o.Outcome);
        return new(
            [.. visits.Where(v => !IsFinished([.. papers[v.Visit]], [.. outcomes[v.Visit]])).Select(v => v.Read)],
            [.. visits.Select(v => v.Read.Read.Record!).SelectMany(WithoutId)]
        );
    }

    /// <summary>Whether one of them has this item, which has no id.</summary>
    public bool HasRow(RecalledItem item) => _withoutId.Contains(SweepPlan.RowKey(item.Item, item.Owner));

    private static IEnumerable<string> WithoutId(ExaminationRecord record) =>
        record.Items.Where(i => i.Id is null).Select(i => SweepPlan.RowKey(i, record.Visit.HiredFrom?.Name ?? record.Visit.Employer?.Name));

    /// <summary>Each item has its label, and each withdrawn one its notice.</summary>
    private static bool IsFinished(IReadOnlyList<DocumentStatus> papers, IReadOnlyList<RememberedOutcome> outcomes)
    {
        return Has(DocumentTypes.QuarantineLabel, outcomes)
            && Has(DocumentTypes.Notice, outcomes.Where(o => string.Equals(o.Outcome, Outcome.Withdraw.Word(), StringComparison.Ordinal)));

        bool Has(DocumentType type, IEnumerable<RememberedOutcome> asked) =>
            asked
                .GroupBy(o => o.Item ?? "", StringComparer.Ordinal)
                .All(of =>
                    papers.Count(p =>
                        string.Equals(p.Kind, type.Kind, StringComparison.Ordinal) && p.Items.Contains(of.Key, StringComparer.Ordinal)
                    ) >= of.Count()
                );
    }
}
