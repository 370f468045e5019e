using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>A withdrawal from before the deciding examination.</summary>
internal sealed record EarlierWithdrawal(LocalDate On, string? Document, Sentence Why, IReadOnlyList<string> Codes, bool NeverReleasable)
{
    /// <summary>The parts or wholes it rested on; empty where not known.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>An unknown reason is none that a renewal could end.</summary>
    public bool RestsOnPartsAlone => Codes.Count > 0 && Codes.All(c => c is "W8" or "W9");

    /// <summary>Whether the entry is a release at all, by somebody known and with grounds, and of this withdrawal.</summary>
    public bool IsReleasedBy(RowCase<Release> release) =>
        release.Row is { Grounds: not null, On: { } on } && on >= On
        && release.Context.KnowsPerson(release.Row.By)
        && (Document is null ? !NamesAnother(release) : string.Equals(Document, release.Row.Document, StringComparison.Ordinal));

    /// <summary>The document named is known, and withdrew the item on another day than this.</summary>
    private bool NamesAnother(RowCase<Release> release) =>
        release.Row.Document is { } document && release.Context.History.Withdrawals.Any(w => w.On != On
            && string.Equals(w.ItemId, release.ItemId, StringComparison.Ordinal)
            && string.Equals(w.Document, document, StringComparison.Ordinal));
}

/// <summary>Gathers the withdrawals that may still be open: from the record's own history and from the store's.</summary>
internal static class EarlierWithdrawals
{
    public static IEnumerable<EarlierWithdrawal> Of(ItemCase item) =>
        item.Earlier.Select(e => InRecord(item, e)).OfType<EarlierWithdrawal>().Concat(Stored(item));

    /// <summary>Withdrawals up to and including a day, this visit's own examination among them; none where the day is not known.</summary>
    public static IEnumerable<EarlierWithdrawal> UpTo(ItemCase item, LocalDate? day) =>
        item.Earlier.Concat(item.Deciding).Select(e => InRecord(item, e)).OfType<EarlierWithdrawal>().Concat(Stored(item)).Where(w => w.On <= day);

    private static EarlierWithdrawal? InRecord(ItemCase item, ExaminationCase examination)
    {
        var reasons = OutcomeRules.OfExamination.SelectMany(r => r.Reasons(item, examination)).ToList();
        return reasons.Count == 0 || examination.On is not { } on ? null : new EarlierWithdrawal(on, null,
            new Sentence(w => string.Join("; ", reasons.Select(r => r.Reason.Said.In(w)))), [.. reasons.Select(r => r.Reason.Code)], reasons.Exists(r => r.NeverReleasable));
    }

    /// <summary>
    /// What was withdrawn on the day of the deciding examination was withdrawn by it, unless it is known to have been at another
    /// visit; what was withdrawn after it, since.
    /// </summary>
    private static IEnumerable<EarlierWithdrawal> Stored(ItemCase item) =>
        (from w in item.Context.History.Withdrawals
         where string.Equals(w.ItemId, item.Item.Id, StringComparison.Ordinal) && (w.IsOfAnotherVisit || w.On != item.ExaminedOn)
         select w)
        .OrderBy(w => w.On).ThenBy(InWords, StringComparer.Ordinal).Select(Remembered);

    /// <summary>So that a store may remember them in any order.</summary>
    private static string InWords(PastWithdrawal w) => $"{w.Document}\n{string.Join(' ', w.Codes)}\n{string.Join(' ', w.Parts)}\n{w.NeverReleasable}\n{w.IsOfAnotherVisit}";

    /// <summary>
    /// Whether a withdrawal that a store remembers is still open, be the item in the record or not. What is not in the record
    /// can be released there all the same; that its parts were renewed cannot be told.
    /// </summary>
    public static bool IsOpen(RecordContext context, PastWithdrawal withdrawal)
    {
        var remembered = Remembered(withdrawal);
        var items = context.ItemsWithId(withdrawal.ItemId).ToList();
        return items.Count > 0 ? items.Exists(item => EarlierWithdrawalIsOpen.IsOpen(item, remembered))
            : remembered.NeverReleasable || !context.Releases.Any(r => string.Equals(r.ItemId, withdrawal.ItemId, StringComparison.Ordinal) && remembered.IsReleasedBy(r));
    }

    private static EarlierWithdrawal Remembered(PastWithdrawal w) =>
        new(w.On, w.Document, Sentence.AsIs(string.Join(", ", w.Codes)), w.Codes, w.NeverReleasable) { Parts = w.Parts };
}
