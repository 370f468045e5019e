using ExamDocs.Core.Cases;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>A withdrawal before the deciding examination.</summary>
/// <param name="Past">Its day, codes and documents.</param>
/// <param name="Why">Its reasons in words.</param>
/// <param name="IsInRecord">True where an earlier examination in this record made it.</param>
internal sealed record EarlierWithdrawal(PastWithdrawal Past, Sentence Why, bool IsInRecord)
{
    public LocalDate On => Past.On;

    public string? Document => Past.Document;

    public bool NeverReleasable => Past.NeverReleasable;

    /// <summary>True where this record has a withdrawal of the same day: then a release in it need not say which one it is of.</summary>
    public bool MayBeUnnamed { get; init; }
}

/// <summary>A release of an item, in this record or in another.</summary>
/// <param name="Release">As recorded.</param>
/// <param name="By">Name of the person who gave it.</param>
/// <param name="Row">Its row in this record; null for another record's.</param>
internal sealed record KnownRelease(Release Release, string? By, RowCase<Release>? Row);

/// <summary>
/// Gathers the withdrawals that may still be open, from the record's own history and from all other records. Its own history is
/// judged by the rules of today; what other records decided stands as they decided it.
/// </summary>
internal static class EarlierWithdrawals
{
    /// <summary>All withdrawals, ended or not, the record's own first.</summary>
    public static IReadOnlyList<EarlierWithdrawal> Of(ItemCase item)
    {
        var stored = item.Context.PastWithdrawalsOf(item.ItemId).ToList();
        if (stored.Count == 0 && item.Earlier.Count == 0)
            return [];
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

    /// <summary>Withdrawals up to a day, inclusive, with those by this visit's own examinations; none where the day is not known.</summary>
    public static IEnumerable<EarlierWithdrawal> UpTo(ItemCase item, LocalDate? day) =>
        Of(item).Concat(item.Deciding.Select(e => InRecord(item, e)).OfType<EarlierWithdrawal>()).Where(w => w.On <= day);

    /// <summary>True where no release has ended it, and no renewal of the parts that it was only for.</summary>
    /// <param name="item">The item.</param>
    /// <param name="withdrawal">A withdrawal of it.</param>
    /// <param name="day">The last day on which a release or renewal counts, inclusive; if left out, the day examined.</param>
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

    /// <summary>What a release does to a withdrawal of the item.</summary>
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

    /// <summary>Releases in this record that a person of the record gave, and releases in other records.</summary>
    private static IEnumerable<KnownRelease> ReleasesOf(ItemCase item) =>
        item
            .Releases.Where(r => item.Context.KnowsPerson(r.Row.By))
            .Select(r => new KnownRelease(r.Row, item.Context.PersonWithId(r.Row.By)?.Name ?? r.Row.By, r))
            .Concat(item.Context.History.Releases.Where(r => IsOf(item, r.ItemId)).Select(r => new KnownRelease(r.Release, r.By, null)));

    /// <summary>Days of remedies of the item, and of renewals of its parts, in any record.</summary>
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

    private static EarlierWithdrawal Remembered(PastWithdrawal w) =>
        new(w, new Sentence(words => words.Words.Said(OutcomeRules.InWords(w.Codes))), IsInRecord: false);

    private static bool IsOf(ItemCase item, string? id) => item.Item.Id is { } own && string.Equals(own, id, StringComparison.Ordinal);

    /// <summary>The content as text: it gives withdrawals of one day the same order, whatever order the store returns.</summary>
    private static string InWords(PastWithdrawal w) =>
        $"{w.Document}\n{string.Join(' ', w.Codes)}\n{string.Join(' ', w.Parts)}\n{w.NeverReleasable}\n{w.IsOfThisVisit}\n{w.Notice}";
}
