using ExamDocs.Core.Cases;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>A withdrawal from before the deciding examination.</summary>
/// <param name="Past">What it is known by.</param>
/// <param name="Why">Its reasons in words.</param>
/// <param name="IsInRecord">An examination of this record's own history withdrew it.</param>
internal sealed record EarlierWithdrawal(PastWithdrawal Past, Sentence Why, bool IsInRecord)
{
    public LocalDate On => Past.On;

    public string? Document => Past.Document;

    public bool NeverReleasable => Past.NeverReleasable;

    /// <summary>Where the withdrawal is in the record, a release of the record may leave out which it is of.</summary>
    public bool MayBeUnnamed { get; init; }
}

/// <summary>A release that counts for an item, of this record or of another.</summary>
/// <param name="Release">As recorded.</param>
/// <param name="By">Name of who gave it.</param>
/// <param name="Row">Its row in this record; null for another record's.</param>
internal sealed record KnownRelease(Release Release, string? By, RowCase<Release>? Row);

/// <summary>Gathers the withdrawals that may still be open: from the record's own history and from all other records.</summary>
internal static class EarlierWithdrawals
{
    /// <summary>All of them, ended or not, the record's own first.</summary>
    public static IReadOnlyList<EarlierWithdrawal> Of(ItemCase item)
    {
        var stored = item.Context.History.Withdrawals.Where(w => IsOf(item, w.ItemId)).ToList();
        var own = item.Earlier.Select(e => InRecord(item, e)).OfType<EarlierWithdrawal>().ToList();
        var days = own.Select(w => w.On).ToHashSet();
        return
        [
            .. own.Select(w =>
                w with
                {
                    Past = w.Past with
                    {
                        Documents = [.. stored.Where(s => s.On == w.On).SelectMany(s => s.Documents.Append(s.Document)).OfType<string>()],
                    },
                }
            ),
            .. stored
                .OrderBy(w => w.On)
                .ThenBy(InWords, StringComparer.Ordinal)
                .Select(w => Remembered(w) with { MayBeUnnamed = days.Contains(w.On) }),
        ];
    }

    /// <summary>Withdrawals up to and including a day, this visit's own examination among them; none where the day is not known.</summary>
    public static IEnumerable<EarlierWithdrawal> UpTo(ItemCase item, LocalDate? day) =>
        Of(item).Concat(item.Deciding.Select(e => InRecord(item, e)).OfType<EarlierWithdrawal>()).Where(w => w.On <= day);

    /// <summary>Neither ended by a release that can end it, nor by the renewal of the parts that alone it depends on.</summary>
    /// <param name="item">The item.</param>
    /// <param name="withdrawal">A withdrawal of it.</param>
    /// <param name="day">The last day on which a release or renewal counts, inclusive; left out, the day examined.</param>
    public static bool IsOpen(ItemCase item, EarlierWithdrawal withdrawal, LocalDate? day = null) =>
        EndedBy(item, withdrawal, day) is null && !IsRenewed(item, withdrawal, day);

    public static bool IsRenewed(ItemCase item, EarlierWithdrawal withdrawal, LocalDate? day = null) =>
        WithdrawalEnd.IsRenewed(
            withdrawal.Past,
            item.Item.Id,
            [.. item.Context.Record.Renewals, .. item.Context.History.Renewals],
            day ?? item.ExaminedOn
        );

    /// <summary>The release that ended it; null where none did.</summary>
    public static KnownRelease? EndedBy(ItemCase item, EarlierWithdrawal withdrawal, LocalDate? day = null) =>
        ReleasesOf(item)
            .FirstOrDefault(r =>
                !(r.Release.On > (day ?? item.ExaminedOn ?? item.Context.AsOf))
                && EffectOf(item, r.Release, withdrawal) is ReleaseEffect.Ends
            );

    /// <summary>What a release comes to for a withdrawal of the item.</summary>
    public static ReleaseEffect EffectOf(ItemCase item, Release release, EarlierWithdrawal withdrawal)
    {
        var named =
            withdrawal is { IsInRecord: true } or { MayBeUnnamed: true } && release is { Document: null, WithdrawnOn: null }
                ? release with
                {
                    WithdrawnOn = withdrawal.On,
                }
                : release;
        return WithdrawalEnd.Of(named, withdrawal.Past, MakingGood(item));
    }

    /// <summary>Of this record, given by somebody it knows; and of others.</summary>
    private static IEnumerable<KnownRelease> ReleasesOf(ItemCase item) =>
        item
            .Releases.Where(r => item.Context.KnowsPerson(r.Row.By))
            .Select(r => new KnownRelease(r.Row, item.Context.PersonWithId(r.Row.By)?.Name ?? r.Row.By, r))
            .Concat(item.Context.History.Releases.Where(r => IsOf(item, r.ItemId)).Select(r => new KnownRelease(r.Release, r.By, null)));

    /// <summary>Days of remedies of the item, and of renewals of its parts, on any record.</summary>
    private static IEnumerable<LocalDate> MakingGood(ItemCase item) =>
        item
            .Context.Record.Remedies.Concat(item.Context.History.Remedies)
            .Where(r => IsOf(item, r.Item))
            .Select(r => r.DoneOn)
            .Concat(item.Context.Record.Renewals.Concat(item.Context.History.Renewals).Where(r => IsOf(item, r.Item)).Select(r => r.DoneOn))
            .OfType<LocalDate>();

    private static EarlierWithdrawal? InRecord(ItemCase item, ExaminationCase examination)
    {
        var reasons = OutcomeRules.OfExamination.SelectMany(r => r.Reasons(item, examination)).ToList();
        return reasons.Count == 0 || examination.On is not { } on
            ? null
            : new EarlierWithdrawal(
                new PastWithdrawal(
                    item.Item.Id ?? "",
                    null,
                    on,
                    [.. reasons.Select(r => r.Reason.Code)],
                    reasons.Exists(r => r.NeverReleasable)
                ),
                new Sentence(w => string.Join("; ", reasons.Select(r => r.Reason.Said.In(w)))),
                IsInRecord: true
            );
    }

    private static EarlierWithdrawal Remembered(PastWithdrawal w) => new(w, Sentence.AsIs(string.Join(", ", w.Codes)), IsInRecord: false);

    private static bool IsOf(ItemCase item, string? id) => item.Item.Id is { } own && string.Equals(own, id, StringComparison.Ordinal);

    /// <summary>So that a store may remember them in any order.</summary>
    private static string InWords(PastWithdrawal w) =>
        $"{w.Document}\n{string.Join(' ', w.Codes)}\n{string.Join(' ', w.Parts)}\n{w.NeverReleasable}\n{w.IsOfThisVisit}";
}
