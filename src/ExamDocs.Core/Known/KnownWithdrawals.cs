using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>The withdrawals of an item at other visits, and its renewals and remedies in other records.</summary>
internal sealed class KnownWithdrawals(ExaminationRecord current, KnownItems items, FittingFacts facts)
{
    private readonly KnownReleases _releases = new(items);

    /// <summary>
    /// Every withdrawal of the item. A later visit that withdrew it only because it was withdrawn already (W10) is left out where
    /// the withdrawal itself is known: else each visit in between would need a release of its own.
    /// </summary>
    /// <param name="id">The item's id in the record under check: the result has it.</param>
    /// <param name="entries">All entries of the item.</param>
    /// <param name="idHere">Gives the id that the record under check has for an item of another record; null to keep the ids as they
    /// are there.</param>
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

    /// <summary>
    /// Several records may have one withdrawal, each with documents of its own. A release may name any of them, so each gets them all.
    /// </summary>
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
            SharesDay = all.Exists(o => !IsDerived(o.Withdrawal) && IsForAnotherCause(told.Withdrawal, o.Withdrawal)),
        };
    }

    /// <summary>
    /// True where both are one withdrawal: of one day, for the same reasons and by the same criteria, or from versions of one visit. So is
    /// a later visit that only found the item still withdrawn: the label that hangs on it now may be from that visit. Where only a
    /// <c>formerly</c> that something contradicts joins two items, each has its own withdrawals.
    /// </summary>
    private bool IsOneWithdrawal((KnownEntry Entry, PastWithdrawal Withdrawal) one, (KnownEntry Entry, PastWithdrawal Withdrawal) other)
    {
        if (!ReferenceEquals(one.Entry, other.Entry) && !items.AreOneThing(one.Entry, other.Entry))
            return false;
        if (IsDerived(other.Withdrawal) && other.Withdrawal.On >= one.Withdrawal.On)
            return true;
        return other.Withdrawal.On == one.Withdrawal.On
            && !IsForAnotherCause(one.Withdrawal, other.Withdrawal)
            && (
                KnownVisit.IsOneVisit(one.Entry.Visit.Record, other.Entry.Visit.Record)
                || (
                    WithdrawalEnd.HaveOneReason(one.Withdrawal, other.Withdrawal)
                    && one.Entry.FoundOn(one.Withdrawal.On).SetEquals(other.Entry.FoundOn(other.Withdrawal.On))
                )
            );
    }

    /// <summary>What makes good the fault of one notice leaves that of another.</summary>
    private static bool IsForAnotherCause(PastWithdrawal one, PastWithdrawal other) =>
        one.On == other.On && !string.Equals(one.Notice, other.Notice, StringComparison.Ordinal);

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
        var renewed = entries
            .Where(e => MakesGood(e, entries))
            .SelectMany(e => e.Visit.Record.Renewals.Where(r => e.IsMine(r.Item)))
            .Select(r => r.DoneOn);
        var makingGood = Remedies(Id, entries).Select(r => r.DoneOn).Concat(renewed).OfType<LocalDate>().ToList();
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
    /// Renewals of the item in these records, each with its visit. Left out are renewals of another row whose id is spelt alike, and
    /// those that may be of another thing with this id: a renewal of one thing must not end the withdrawal of the other.
    /// </summary>
    /// <param name="entries">All entries of the item.</param>
    public IEnumerable<(KnownVisit Visit, Renewal Renewal)> Renewals(IReadOnlyList<KnownEntry> entries) =>
        from e in entries
        let renewals = e
            .Visit.Record.Renewals.Where(r => e.IsMine(r.Item) || e.IsMine(r.RemovedPart) || e.IsMine(r.FittedPart))
            .Where(r => !items.IsReplaced(e.Visit, r.Item) && !items.IsReplaced(e.Visit, r.RemovedPart))
            .ToList()
        where renewals.Count > 0 && Renews(e, entries)
        from renewal in renewals
        where !e.IsMine(renewal.Item) || !TakesOffAnother(e, renewal.RemovedPart, entries)
        select (e.Visit, renewal);

    /// <summary>
    /// True where the wrong part came off: the record has its own row for the part that it took off, while another part with that id
    /// was withdrawn on this whole, and no record has taken that one off.
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

    /// <summary>True where a renewal in the entry's record counts for every entry that was withdrawn because of a part (W8, W9).</summary>
    public bool Renews(KnownEntry entry, IEnumerable<KnownEntry> entries) => IsDoneTo(entry, entries, code => code is "W8" or "W9");

    /// <summary>The same for a remedy: it makes nothing good where another thing with that id was withdrawn.</summary>
    private bool MakesGood(KnownEntry entry, IEnumerable<KnownEntry> entries) =>
        !items.IsReplaced(entry) && IsDoneTo(entry, entries, code => code is ['W', ..] and not ("W10" or "W11"));

    private bool IsDoneTo(KnownEntry entry, IEnumerable<KnownEntry> entries, Predicate<string> isReason) =>
        entry.IsNameAlone
        || entries
            .Where(e => e.Outcomes.Any(o => o.Outcome is Outcome.Withdraw && o.Codes.Any(code => isReason(code))))
            .All(withdrawn => items.CountsFor(entry, withdrawn));

    private IEnumerable<PastWithdrawal> Recorded(string id, KnownEntry entry, Func<KnownVisit, string, string>? idHere)
    {
        var isOfThisVisit = KnownVisit.IsOneVisit(entry.Visit.Record, current);
        foreach (var outcome in entry.Outcomes.Where(o => o.Outcome is Outcome.Withdraw))
        {
            var documents = Naming(outcome.Documents);
            string[] codes = [.. outcome.Codes.Where(c => c is ['W', ..] and not "W11")];
            // Withdrawn only because it was destroyed before: that is a repeated withdrawal, like W10, and ends with the first one.
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
                    Notice = RecallVisit.Read(entry.Visit.Record.Visit.Reference)?.Notice,
                };
        }
        if (entry.DestroyedOn is { } day)
        {
            var documents = Naming(entry.Documents);
            yield return new PastWithdrawal(id, documents.FirstOrDefault(), day, ["W11"], true)
            {
                Documents = documents,
                IsOfThisVisit = isOfThisVisit,
            };
        }
    }

    private static List<string> Naming(IEnumerable<KnownDocument> documents) =>
        [.. documents.Where(d => d.Kind is "quarantine-label" or "notice" or "report").Select(d => d.Number)];

    private static bool IsDerived(PastWithdrawal w) => w.Codes is ["W10"];
}
