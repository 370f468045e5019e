using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>What other records release an item from.</summary>
internal sealed class KnownReleases(KnownItems items)
{
    /// <summary>Releases of the item that are sound in the record that holds them, with that record's name of who gave them.</summary>
    public IReadOnlyList<PastRelease> Of(string id, IReadOnlyList<KnownEntry> entries) =>
        [
            .. (
                from entry in entries
                let record = entry.Visit.Record
                from release in record.Releases
                where !entry.IsNameAlone && entry.IsMine(release.Item) && !(release.On > entry.Day) && !IsOfItsOwn(release, entry, entries)
                let person = record.People.FirstOrDefault(p =>
                    p.Id is not null && string.Equals(p.Id, release.By, StringComparison.Ordinal)
                )
                where person is not null
                from named in Named(release, entry)
                where entries.Where(e => IsNamedBy(named, e)).All(e => items.CountsFor(entry, e))
                select new PastRelease(id, person.Name, named with { Item = id })
            )
                .OrderBy(r => r.Release.On)
                .ThenBy(r => r.Release.ToString(), StringComparer.Ordinal),
        ];

    /// <summary>
    /// Whether the entry tells of a withdrawal that the release names. Where one id stands for several things, what was released
    /// of the one is not released of the other.
    /// </summary>
    private static bool IsNamedBy(Release release, KnownEntry entry) =>
        entry.Outcomes.Any(o => o.Outcome is Outcome.Withdraw && (o.ExaminedOn ?? entry.Day) == release.WithdrawnOn)
        || (release.Document is { } number && entry.Documents.Any(d => string.Equals(d.Number, number, StringComparison.Ordinal)));

    /// <summary>
    /// A record that withdraws the item does not release it in the same breath, nor by a document that another record issued on
    /// account of it.
    /// </summary>
    private static bool IsOfItsOwn(Release release, KnownEntry entry, IReadOnlyList<KnownEntry> entries) =>
        entry.Outcomes.Any(o =>
            o.Outcome is Outcome.Withdraw
            && (o.ExaminedOn ?? entry.Day) == entry.Day
            && o.Codes.Any(c => c is ['W', ..] and not "W10" and not "W11")
        )
        && (
            release.WithdrawnOn == entry.Day
            || entries
                .Where(e => e.Day >= entry.Day)
                .SelectMany(e => e.Documents)
                .Any(d => string.Equals(d.Number, release.Document, StringComparison.Ordinal))
        );

    /// <summary>One that names nothing is of the withdrawals that its own record tells of from before.</summary>
    private static IEnumerable<Release> Named(Release release, KnownEntry entry) =>
        release is not { Document: null, WithdrawnOn: null }
            ? [release]
            : entry
                .Outcomes.Where(o => o.Outcome is Outcome.Withdraw && o.ExaminedOn < entry.Day)
                .Select(o => release with { WithdrawnOn = o.ExaminedOn });
}
