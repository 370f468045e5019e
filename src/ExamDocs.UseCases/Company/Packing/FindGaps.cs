using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.Templates.AuditPack;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>
/// Finds what is missing of what somebody has to show. How an item stands is the register's word; here it is only looked up whether records
/// and documents go with it.
/// </summary>
/// <param name="things">What the pack is about.</param>
/// <param name="asked">What it is asked to show.</param>
/// <param name="records">Every record of the employer that the register knew.</param>
internal sealed class FindGaps(PackedThings things, PackQuestion asked, IReadOnlyList<ExaminationRecord> records)
{
    /// <summary>Kit with no document in date.</summary>
    public IEnumerable<PackGap> WithoutDocument() =>
        things
            .Decided.Where(t => t.Shown.Standing is not Standing.Withdrawn)
            .Select(t => (t.Shown, Why: WhyNoDocument(t)))
            .Where(t => t.Why is not null)
            .Select(t => Gap(PackGapKind.NoDocumentInDate, t.Shown.Id, t.Why!))
            .Concat(things.Undecided.Select(u => Gap(PackGapKind.NoDocumentInDate, NameOf(u.Item), $"no visit has decided about it")));

    /// <summary>Kit withdrawn with no quarantine record.</summary>
    public IEnumerable<PackGap> WithoutQuarantine() =>
        from thing in things.Decided
        where thing.Shown.Standing is Standing.Withdrawn && !IsPutAway(thing, thing.OutSince)
        select Gap(
            PackGapKind.NoQuarantineRecord,
            thing.Shown.Id,
            $"{Message.AsIs(thing.Why(asked))}; no record says that it was put in quarantine, sent for repair, destroyed or lost"
        );

    /// <summary>Defects with no remedy recorded by the stated date.</summary>
    public IEnumerable<PackGap> WithoutRemedy() =>
        from thing in things.Decided
        from defect in thing.Examined.SelectMany(e => e.Defects)
        where defect is { Danger: Danger.Later, BecomesDangerOn: not null } && defect.BecomesDangerOn <= asked.AsOf
        where !IsRemedied(thing) && !IsPutAway(thing, thing.Decided.Day)
        select Gap(
            PackGapKind.RemedyNotRecorded,
            thing.Shown.Id,
            $"the defect found on {thing.Decided.Day} could become a danger by {defect.BecomesDangerOn!.Value}, and no remedy is "
                + $"recorded: '{defect.Description}'"
        );

    /// <summary>Missing declarations of conformity, where the law of the latest examination has them kept.</summary>
    /// <param name="enclosed">The items that a file enclosed is about.</param>
    public IEnumerable<PackGap> WithoutDeclaration(IReadOnlySet<PackedThing> enclosed) =>
        from thing in things.Decided
        where thing.Shown.Standing is not Standing.Withdrawn
        where thing.Thing.Counting.All(e => string.IsNullOrWhiteSpace(e.Item.Declaration?.Reference)) && !enclosed.Contains(thing)
        let kept = KeptDeclaration(thing)
        where kept is not null
        select Gap(
            PackGapKind.DeclarationMissing,
            thing.Shown.Id,
            $"no declaration of conformity is recorded or enclosed ({Message.AsIs(kept.Source)})"
        );

    /// <summary>Examiners without evidence of competence.</summary>
    /// <param name="examiners">With the files about each.</param>
    public IEnumerable<PackGap> WithoutCompetence(IReadOnlyList<PackExaminer> examiners) =>
        examiners
            .Where(e => e.Evidence.Count == 0)
            .Select(e => Gap(PackGapKind.NoCompetenceEvidence, e.Name, $"no file about this examiner is enclosed"));

    /// <summary>Replaced documents still in circulation.</summary>
    /// <param name="lying">Documents that lie in folders where people take them from, with the name of the file.</param>
    public IEnumerable<PackGap> Replaced(IEnumerable<(DocumentStatus Document, string File)> lying) =>
        lying
            .Where(l => l.Document.Ended is DocumentEnd.Replaced)
            .OrderBy(l => l.Document.Number, StringComparer.Ordinal)
            .Select(l =>
                Gap(
                    PackGapKind.ReplacedInCirculation,
                    l.Document.Number,
                    $"{string.Join(", ", l.Document.ReplacedBy)} replaced it, and its file still lies where it was issued: {l.File}"
                )
            );

    private Message? WhyNoDocument(PackedThing thing)
    {
        if (thing.Shown.Standing is not Standing.InService)
            return Message.AsIs(thing.Why(asked));
        return thing.Documents.Any(d => string.Equals(d.Kind, DocumentTypes.Report.Kind, StringComparison.Ordinal))
            ? null
            : (Message)$"no current report about it was issued for this employer";
    }

    private bool IsPutAway(PackedThing thing, LocalDate since) =>
        Since(r => r.Disposals, d => d.Item, d => d.On, thing, since).Any()
        || thing.Thing.Counting.Any(e => e.Item.Status is ItemStatus.Lost or ItemStatus.Destroyed && e.Day >= since);

    private bool IsRemedied(PackedThing thing) =>
        Since(r => r.Remedies, r => r.Item, r => r.DoneOn, thing, thing.Decided.Day).Any()
        || Since(r => r.Renewals, r => r.Item, r => r.DoneOn, thing, thing.Decided.Day).Any(r => r.RemovedPart is not null);

    /// <summary>Rows of any record that name the item, from a day on; one without a day counts from that of its visit.</summary>
    private IEnumerable<T> Since<T>(
        Func<ExaminationRecord, IEnumerable<T>> rows,
        Func<T, string?> item,
        Func<T, LocalDate?> dayOf,
        PackedThing thing,
        LocalDate since
    ) =>
        from record in records
        from row in rows(record)
        let day = dayOf(row) ?? record.Visit.ExaminedOn
        where day >= since && day <= asked.AsOf && IsAbout(record, item(row), thing)
        select row;

    /// <summary>
    /// Whether a row with this id is about the item: not where its visit was corrected since, nor where no record
    /// tells which of several things with that id it means.
    /// </summary>
    private bool IsAbout(ExaminationRecord record, string? id, PackedThing thing)
    {
        if (!thing.Thing.Entries.Any(e => Folded.Same(e.Item.Id, id)))
            return false;
        var own = thing.Thing.Entries.Where(e => ReferenceEquals(e.Record, record) && Folded.Same(e.Item.Id, id)).ToList();
        return own.Count > 0
            ? own.Exists(thing.Thing.Counting.Contains)
            : !records.SkipWhile(r => !ReferenceEquals(r, record)).Skip(1).Any(later => KnownVisit.IsOneVisit(later, record))
                && things.Decided.All(other => other == thing || !other.Thing.Entries.Any(e => Folded.Same(e.Item.Id, id)));
    }

    private KeepUntil? KeptDeclaration(PackedThing thing)
    {
        var (visit, examination) = (thing.Decided.Record.Visit, thing.Examined.FirstOrDefault());
        return RegimesInForce
            .Of(
                asked.Rules.FindRegime(examination?.Regime),
                asked.Rules.FindRegime(visit.Regime),
                thing.Shown.Item.Purpose,
                thing.Shown.Item.Category,
                thing.Decided.Day
            )
            .Select(r => r.Keep(KeptDocument.DeclarationOfConformity, thing.Decided.Day))
            .FirstOrDefault(k => k is { IsKnown: true });
    }

    private PackGap Gap(PackGapKind kind, string about, Message words) => new(kind, about, asked.Say(words));

    private string NameOf(Item item) => string.IsNullOrWhiteSpace(item.Id) ? asked.Say($"an item without an id") : item.Id;
}
