using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording.Corrections;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Says in a document's language why it takes the place of another, from what differs between the two.</summary>
internal static class CorrectionReason
{
    /// <summary>Most kinds of change that are named, and most items of each.</summary>
    private const int MostNamed = 3;

    /// <param name="earlier">The document that is replaced; null where it cannot be read.</param>
    /// <param name="job">The one that takes its place.</param>
    /// <param name="holds">Whether the earlier one still says what the record says, so that only its form differs.</param>
    /// <param name="ofVisit">What the whole visit's record gives differently; asked where the earlier document holds only a part of it.
    /// Null where that is not known.</param>
    /// <returns>Null where nothing is found to differ.</returns>
    public static string? Of(EarlierDocument? earlier, DocumentJob job, bool holds, Func<IReadOnlyList<RecordChange>?> ofVisit)
    {
        if (earlier is null)
            return null;
        var words = CorrectionPhrases.Languages.In(job.Language);
        return job.Language.In(() => holds ? OfForm(earlier.Contents.Basis, job, words) : OfContent(earlier, job, words, ofVisit));
    }

    private static string? OfForm(DocumentBasis before, DocumentJob job, CorrectionPhrases words)
    {
        var after = job.Basis(DocumentJob.Draft(job.Type));
        var differing = new List<string>();
        if (after.Letterhead is not null && !HasSameWords(before, after))
            differing.Add(words.Letterhead);
        if (after.Signature is { } own && (own.Name, own.IsTimestamped) != (before.Signature?.Name, before.Signature?.IsTimestamped))
            differing.Add(words.ElectronicSignature);
        if (after.Reading != before.Reading)
            differing.Add(words.ReadingDistance);
        return differing.Count > 0 ? string.Join("; ", differing)
            : after.Letterhead?.Logo is not null ? words.Letterhead
            : null;
    }

    private static bool HasSameWords(DocumentBasis before, DocumentBasis after) =>
        before.Letterhead is { } one
        && after.Letterhead is { } other
        && (one.Name, one.Address, one.Contact, one.Colour, one.Footer)
            == (other.Name, other.Address, other.Contact, other.Colour, other.Footer);

    private static string? OfContent(
        EarlierDocument earlier,
        DocumentJob job,
        CorrectionPhrases words,
        Func<IReadOnlyList<RecordChange>?> ofVisit
    )
    {
        var (basis, before) = (earlier.Contents.Basis, earlier.Contents.Record);
        var now = before.PartOf is null ? null : job.Visit.Slices.Of(basis.Items.Concat(job.Items.Select(i => i.Item.Id)));
        var all =
            now is null ? RecordDifference.Between(before.Record!, job.Visit.Recorded)
            : ofVisit() is { } changes ? ChangesOf([before.Record!, now.Record], changes)
            : null;
        var about = basis.Items.Concat(job.Items.Select(i => i.Item.Id ?? "")).ToHashSet(StringComparer.Ordinal);
        // A part that is not in the document itself may change what it says of the whole.
        var own = all?.Where(c => c.Item is null || about.Contains(c.Item)).ToList();
        string?[] said =
        [
            all is null ? null : InWords(own!.Count > 0 ? own : all, words),
            HasSameRules(basis, job, isPart: now is not null) ? null : words.OwnRules,
        ];
        return said.Any(s => s is not null) ? string.Join("; ", said.OfType<string>())
            : all is not null && IsKnownElsewhere(basis, job, now?.History ?? job.Visit.History) ? words.OtherRecords
            : null;
    }

    /// <summary>
    /// Those of a visit's changes that are about rows in either part. What two parts give differently would not do: a row that bears on
    /// the document only since the correction was there before, too.
    /// </summary>
    private static List<RecordChange> ChangesOf(IReadOnlyList<ExaminationRecord> parts, IReadOnlyList<RecordChange> ofVisit)
    {
        var named = parts.SelectMany(ItemKeys.Of).Select(k => k.Item).Append("").ToHashSet(StringComparer.Ordinal);
        var models = parts.SelectMany(p => p.Limits).Select(RecordDifference.ModelOf).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. ofVisit.Where(c =>
                c.Item is { } item
                    ? named.Contains(item)
                    : !string.Equals(c.What, RecordDifference.OfLimits, StringComparison.Ordinal) || models.Contains(c.Whose ?? "")
            ),
        ];
    }

    /// <summary>A part names no more of the user's rules than the whole visit.</summary>
    private static bool HasSameRules(DocumentBasis before, DocumentJob job, bool isPart) =>
        OwnRules.Of(job.Visit) is var now && isPart
            ? before.OwnRules.All(r => now.Contains(r, StringComparer.Ordinal))
            : now.SequenceEqual(before.OwnRules, StringComparer.Ordinal);

    private static bool IsKnownElsewhere(DocumentBasis before, DocumentJob job, History known)
    {
        var now = job.Basis(DocumentJob.Draft(job.Type)) with { History = known };
        return !DocumentFile.Write(Known(before.History)).AsSpan().SequenceEqual(DocumentFile.Write(Known(now.History)));

        DocumentBasis Known(History history) => now with { History = history with { Asked = null } };
    }

    private static string? InWords(IReadOnlyList<RecordChange> changes, CorrectionPhrases words)
    {
        var kinds = changes.GroupBy(c => c.What, StringComparer.Ordinal).ToList();
        return kinds.Count == 0
            ? null
            : Cut(
                [.. kinds.Select(k => OfKind(k.Key, [.. k.Select(c => c.Whose).OfType<string>().Distinct(StringComparer.Ordinal)], words))],
                "; ",
                words
            );
    }

    private static string OfKind(string what, IReadOnlyList<string> whose, CorrectionPhrases words) =>
        whose.Count == 0 ? words.Word(what) : words.Of(words.Word(what), Cut(whose, ", ", words));

    private static string Cut(IReadOnlyList<string> all, string between, CorrectionPhrases words) =>
        all.Count <= MostNamed + 1
            ? string.Join(between, all)
            : words.AndMore(string.Join(between, all.Take(MostNamed)), all.Count - MostNamed);
}
