using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>What withdrew an item at other visits, and what renewals and remedies other records hold of it.</summary>
internal sealed class KnownWithdrawals(ExaminationRecord current, KnownItems items, FittingFacts facts)
{
    private readonly KnownReleases _releases = new(items);

    /// <param name="id">The id to give them: the item's in the record that is looked at.</param>
    /// <param name="entries">All entries of the item.</param>
    /// <param name="idHere">The id that the record which is looked at has for an item of another; null to leave ids as they are
    /// there.</param>
    public IReadOnlyList<PastWithdrawal> Of(string id, IReadOnlyList<KnownEntry> entries, Func<KnownVisit, string, string>? idHere = null)
    {
        var all = entries.SelectMany(e => Recorded(id, e, idHere).Select(w => (Entry: e, Withdrawal: w))).ToList();
        var hasOwn = all.Exists(w => !IsDerived(w.Withdrawal));
        return
        [
            .. all.Where(w => !IsDerived(w.Withdrawal) || !hasOwn)
                .Select(w => WithDocuments(w, all))
                .OrderBy(w => w.On)
                .ThenBy(w => w.Document, StringComparer.Ordinal)
                .ThenBy(w => string.Join(' ', w.Codes), StringComparer.Ordinal),
        ];
    }

    /// <summary>Several records may tell of one withdrawal, and only one has its documents: a release may name any of them.</summary>
    private PastWithdrawal WithDocuments((KnownEntry, PastWithdrawal Withdrawal) told, List<(KnownEntry, PastWithdrawal Withdrawal)> all)
    {
        var documents = told
            .Withdrawal.Documents.Concat(all.Where(other => IsOneWithdrawal(told, other)).SelectMany(other => other.Withdrawal.Documents))
            .Distinct(StringComparer.Ordinal)
            .ToList();
        return told.Withdrawal with
        {
            Documents = documents,
            Document = told.Withdrawal.Document ?? (documents.Count == 0 ? null : documents[0]),
        };
    }

    /// <summary>
    /// Told of twice: on one day for one reason, or by versions of one visit. The label that hangs on the item now may be of a
    /// later visit at which it was still withdrawn. What is only said to be formerly the same has withdrawals of its own.
    /// </summary>
    private bool IsOneWithdrawal((KnownEntry Entry, PastWithdrawal Withdrawal) one, (KnownEntry Entry, PastWithdrawal Withdrawal) other)
    {
        if (!ReferenceEquals(one.Entry, other.Entry) && !items.AreOneThing(one.Entry, other.Entry))
            return false;
        if (IsDerived(other.Withdrawal) && other.Withdrawal.On >= one.Withdrawal.On)
            return true;
        return other.Withdrawal.On == one.Withdrawal.On
            && (
                KnownEntry.IsOneVisit(one.Entry.Visit.Record, other.Entry.Visit.Record)
                || WithdrawalEnd.Codes(one.Withdrawal).ToHashSet(StringComparer.Ordinal).SetEquals(WithdrawalEnd.Codes(other.Withdrawal))
            );
    }

    public IReadOnlyList<Remedy> Remedies(string id, IReadOnlyList<KnownEntry> entries) =>
        [
            .. entries
                .Where(e => MakesGood(e, entries))
                .SelectMany(e => e.Visit.Record.Remedies.Where(r => e.IsMine(r.Item)).Select(r => r with { Item = id }))
                .Distinct()
                .OrderBy(r => r.DoneOn),
        ];

    /// <summary>Withdrawals that no release or renewal of these records has ended.</summary>
    /// <param name="entries">All entries of the item.</param>
    /// <param name="upTo">The last day on which a release or renewal counts, inclusive; null for any.</param>
    public IReadOnlyList<PastWithdrawal> Open(IReadOnlyList<KnownEntry> entries, LocalDate? upTo = null)
    {
        const string Id = "x";
        var (releases, renewals) = (_releases.Of(Id, entries), Renewals(entries).Select(r => r.Renewal).ToList());
        List<LocalDate> makingGood =
        [
            .. Remedies(Id, entries)
                .Select(r => r.DoneOn)
                .Concat(
                    entries
                        .Where(e => MakesGood(e, entries))
                        .SelectMany(e => e.Visit.Record.Renewals.Where(r => e.IsMine(r.Item)))
                        .Select(r => r.DoneOn)
                )
                .OfType<LocalDate>(),
        ];
        return
        [
            .. Of(Id, entries)
                .Where(w =>
                    !releases.Any(r => !(r.Release.On > upTo) && WithdrawalEnd.Of(r.Release, w, makingGood) is ReleaseEffect.Ends)
                    && !entries
                        .Select(e => e.Item.Id)
                        .Distinct(StringComparer.Ordinal)
                        .Any(id => WithdrawalEnd.IsRenewed(w, id, renewals, upTo))
                ),
        ];
    }

    /// <summary>
    /// Renewals of the item in these records, each with the visit of it. Of another row, though it be spelt alike, a renewal ends
    /// nothing here; nor where one id stands for two things and the other was withdrawn.
    /// </summary>
    /// <param name="entries">All entries of the item.</param>
    public IEnumerable<(KnownVisit Visit, Renewal Renewal)> Renewals(IReadOnlyList<KnownEntry> entries) =>
        from e in entries
        let renewals = e.Visit.Record.Renewals.Where(r => e.IsMine(r.Item) || e.IsMine(r.RemovedPart) || e.IsMine(r.FittedPart)).ToList()
        where renewals.Count > 0 && Renews(e, entries)
        from renewal in renewals
        where !e.IsMine(renewal.Item) || !TakesOffAnother(e, renewal.RemovedPart, entries)
        select (e.Visit, renewal);

    /// <summary>
    /// The record has a row of the part that was taken off, and a part of that id which was withdrawn on this whole is another one,
    /// that no record took off.
    /// </summary>
    private bool TakesOffAnother(KnownEntry whole, string? removed, IReadOnlyList<KnownEntry> entries)
    {
        var row = facts.EverOn([whole]).FirstOrDefault(p => p.IsMine(removed) && !p.IsNameAlone);
        if (row is null)
            return false;
        var takenOff = facts.TakenOff(entries).ToList();
        return facts
            .EverOn(entries)
            .Where(p => !p.IsBeside(whole) && !p.IsNameAlone && p.Particulars.SharesId(row.Particulars))
            .Where(p => p.DestroyedOn is not null || p.Outcomes.Any(o => o.Outcome is Outcome.Withdraw))
            .Any(p => !takenOff.Exists(off => off.IsNameAlone ? off.Particulars.SharesId(p.Particulars) : items.CountsFor(off, p)));
    }

    /// <summary>What the entry's record says was done to it was done to everything among the entries that a part withdrew.</summary>
    public bool Renews(KnownEntry entry, IEnumerable<KnownEntry> entries) => IsDoneTo(entry, entries, code => code is "W8" or "W9");

    /// <summary>The same of a remedy: it makes nothing good where another thing of that id was withdrawn.</summary>
    private bool MakesGood(KnownEntry entry, IEnumerable<KnownEntry> entries) =>
        IsDoneTo(entry, entries, code => code is ['W', ..] and not ("W10" or "W11"));

    private bool IsDoneTo(KnownEntry entry, IEnumerable<KnownEntry> entries, Predicate<string> isReason) =>
        entry.IsNameAlone
        || entries
            .Where(e => e.Outcomes.Any(o => o.Outcome is Outcome.Withdraw && o.Codes.Any(code => isReason(code))))
            .All(withdrawn => items.CountsFor(entry, withdrawn));

    private IEnumerable<PastWithdrawal> Recorded(string id, KnownEntry entry, Func<KnownVisit, string, string>? idHere)
    {
        var isOfThisVisit = KnownEntry.IsOneVisit(entry.Visit.Record, current);
        foreach (var outcome in entry.Outcomes.Where(o => o.Outcome is Outcome.Withdraw))
        {
            var documents = outcome
                .Documents.Where(d => d.Kind is "quarantine-label" or "notice" or "report")
                .Select(d => d.Number)
                .ToList();
            string[] codes = [.. outcome.Codes.Where(c => c is ['W', ..] and not "W11")];
            // Withdrawn only because it was destroyed before: it derives from that.
            if (codes is [] && outcome.Codes.Contains("W11", StringComparer.Ordinal))
                codes = ["W10"];
            if (codes is not ["W10"] || entry.DestroyedOn is null)
                yield return new PastWithdrawal(
                    id,
                    documents.FirstOrDefault(),
                    outcome.ExaminedOn ?? entry.Day,
                    codes,
                    outcome.NeverReleasable && codes is not []
                )
                {
                    Parts = idHere is null ? outcome.Parts : [.. outcome.Parts.Select(part => idHere(entry.Visit, part))],
                    Documents = documents,
                    IsOfThisVisit = isOfThisVisit,
                };
        }
        if (entry.DestroyedOn is { } day)
        {
            var documents = entry.Documents.Where(d => d.Kind is "quarantine-label" or "notice" or "report").Select(d => d.Number).ToList();
            yield return new PastWithdrawal(id, documents.FirstOrDefault(), day, ["W11"], true)
            {
                Documents = documents,
                IsOfThisVisit = isOfThisVisit,
            };
        }
    }

    private static bool IsDerived(PastWithdrawal w) => w.Codes is ["W10"];
}
