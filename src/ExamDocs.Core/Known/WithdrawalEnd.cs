using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>What a release does to one withdrawal.</summary>
internal enum ReleaseEffect
{
    /// <summary>It is of another withdrawal, or of another item.</summary>
    OfAnother,

    /// <summary>It ends the withdrawal.</summary>
    Ends,

    /// <summary>Its reason cannot end a withdrawal for those reasons.</summary>
    WrongReason,

    /// <summary>Only a release because it was recorded in error could end it.</summary>
    OnlyInError,

    /// <summary>It says that it was made good, and no remedy or renewal is on record.</summary>
    NothingMadeGood,

    /// <summary>It has no day, a day before the withdrawal, or no grounds.</summary>
    Incomplete,
}

/// <summary>Decides whether a release or a renewal ends a withdrawal: the same for this record and for all others.</summary>
internal static class WithdrawalEnd
{
    private static readonly string[] MadeGood = ["W1", "W2", "W3", "W4", "W6", "W8", "W9"];
    private static readonly string[] ExaminedAgain = ["W2", "W6"];

    /// <param name="release">The release.</param>
    /// <param name="withdrawal">Of the same item.</param>
    /// <param name="makingGood">The days of remedies and renewals of the item on record.</param>
    public static ReleaseEffect Of(Release release, PastWithdrawal withdrawal, IEnumerable<LocalDate> makingGood)
    {
        if (!IsOf(release, withdrawal))
            return ReleaseEffect.OfAnother;
        if (release.On is not { } on || on < withdrawal.On || !IsSentence(release.Grounds))
            return ReleaseEffect.Incomplete;
        var isMadeGood = makingGood.Any(day => day >= withdrawal.On && day <= on);
        return (release.Because ?? (isMadeGood ? ReleaseReason.MadeGood : ReleaseReason.ExaminedAgain)) switch
        {
            ReleaseReason.RecordedInError => ReleaseEffect.Ends,
            _ when withdrawal.NeverReleasable || !Codes(withdrawal).All(MadeGood.Contains) => ReleaseEffect.OnlyInError,
            ReleaseReason.ExaminedAgain => Codes(withdrawal).All(ExaminedAgain.Contains) && Codes(withdrawal).Any()
                ? ReleaseEffect.Ends
                : ReleaseEffect.WrongReason,
            _ => isMadeGood ? ReleaseEffect.Ends : ReleaseEffect.NothingMadeGood,
        };
    }

    /// <summary>True where the release names the withdrawal: by a document, or by its day where that tells which is meant.</summary>
    private static bool IsOf(Release release, PastWithdrawal withdrawal) =>
        release switch
        {
            { Document: { } number } => withdrawal.IsNamed(number),
            { WithdrawnOn: { } day } => day == withdrawal.On && !withdrawal.SharesDay,
            _ => false,
        };

    /// <summary>Without W10: that one repeats an earlier withdrawal, which needs a release of its own.</summary>
    public static IEnumerable<string> Codes(PastWithdrawal withdrawal) => withdrawal.Codes.Where(c => c is not "W10");

    /// <summary>True where two withdrawals are for the same reasons.</summary>
    public static bool HaveOneReason(PastWithdrawal one, PastWithdrawal other) =>
        Codes(one).ToHashSet(StringComparer.Ordinal).SetEquals(Codes(other));

    /// <summary>
    /// A release needs grounds that somebody else can follow: two words at least, and eight letters (common practice, no source).
    /// </summary>
    public static bool IsSentence(string? text) =>
        text is not null
        && text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Count(word => word.Any(char.IsLetter)) >= 2
        && text.Count(char.IsLetter) >= 8;

    /// <summary>
    /// True where renewals have undone a withdrawal for W8 or W9 alone: the parts that it depends on were taken off, each of them
    /// where they are known.
    /// </summary>
    /// <param name="withdrawal">The withdrawal.</param>
    /// <param name="id">Id of the item.</param>
    /// <param name="renewals">Of all records.</param>
    /// <param name="upTo">The last day on which a renewal counts, inclusive; null for any.</param>
    public static bool IsRenewed(PastWithdrawal withdrawal, string? id, IReadOnlyCollection<Renewal> renewals, LocalDate? upTo)
    {
        var codes = Codes(withdrawal).ToList();
        return id is not null
            && codes.Count > 0
            && codes.TrueForAll(c => c is "W8" or "W9")
            && codes.TrueForAll(code =>
                withdrawal.Parts.Count == 0
                    ? renewals.Any(r => Undoes(code, r, id, null) && IsSince(r))
                    : withdrawal.Parts.All(part => renewals.Any(r => Undoes(code, r, id, part) && IsSince(r)))
            );

        bool IsSince(Renewal renewal) => renewal.DoneOn >= withdrawal.On && !(renewal.DoneOn > upTo);
    }

    /// <summary>W8: the item came off the whole that does not permit it. W9: the part came off the item that it withdrew.</summary>
    private static bool Undoes(string code, Renewal renewal, string id, string? other) =>
        code is "W8"
            ? renewal.Item is not null && Folded.Same(renewal.RemovedPart, id) && (other is null || Folded.Same(renewal.Item, other))
            : renewal.RemovedPart is not null
                && Folded.Same(renewal.Item, id)
                && (other is null || Folded.Same(renewal.RemovedPart, other));
}
