using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>Releases of an item in other records.</summary>
internal sealed class KnownReleases(KnownItems items)
{
    /// <summary>
    /// Releases of the item that are sound in their own record, each with the name of the person who gave it. The name is looked up
    /// in that record: a person's id may mean somebody else in another.
    /// </summary>
    public IReadOnlyList<PastRelease> Of(string id, IReadOnlyList<KnownEntry> entries) =>
        [
            .. (
                from entry in entries
                from release in entry.Visit.Record.Releases
                where IsSound(release, entry) && !IsOfItsOwn(release, entry, entries)
                let person = GiverOf(release, entry)
                where person is not null
                from named in Named(release, entry)
                where entries.Where(e => IsNamedBy(named, e)).All(e => items.CountsFor(entry, e))
                select new PastRelease(id, person.Name, named with { Item = id })
            )
                .OrderBy(r => r.Release.On)
                .ThenBy(r => r.Release.ToString(), StringComparer.Ordinal),
        ];

    private static Person? GiverOf(Release release, KnownEntry entry) =>
        entry.Visit.Record.People.FirstOrDefault(p => p.Id is not null && string.Equals(p.Id, release.By, StringComparison.Ordinal));

    /// <summary>True where a release is of an entry's own row, not dated after it, and no later version of its visit replaced it.</summary>
    private bool IsSound(Release release, KnownEntry entry) =>
        !entry.IsNameAlone && entry.IsMine(release.Item) && !(release.On > entry.Day) && !items.IsReplaced(entry);

    /// <summary>
    /// True where a release in other records ends a quarantine: it is sound, somebody gave it with grounds, on the day of the
    /// quarantine or later, and what it names, if anything, is known of the item.
    /// </summary>
    /// <param name="quarantined">The entry that was put in quarantine.</param>
    /// <param name="day">The day of that.</param>
    /// <param name="entries">All entries of the item.</param>
    public bool EndQuarantine(KnownEntry quarantined, LocalDate day, IReadOnlyList<KnownEntry> entries) =>
        entries.Any(entry =>
            entry.Visit.Record.Releases.Any(release =>
                IsSound(release, entry)
                && release.On >= day
                && WithdrawalEnd.IsSentence(release.Grounds)
                && GiverOf(release, entry) is not null
                && (
                    release.Document is null && (release.WithdrawnOn is null || release.WithdrawnOn == day)
                    || entries.Any(e => IsNamedBy(release, e))
                )
            ) && (quarantined.IsNameAlone || items.CountsFor(entry, quarantined))
        );

    /// <summary>
    /// True where the release names a withdrawal of this entry. Where several things have one id, a release of one of them does not
    /// release the others.
    /// </summary>
    private static bool IsNamedBy(Release release, KnownEntry entry) =>
        entry.Outcomes.Any(o => o.Outcome is Outcome.Withdraw && (o.ExaminedOn ?? entry.Day) == release.WithdrawnOn)
        || (entry.DestroyedOn is { } day && day == release.WithdrawnOn)
        || (release.Document is { } number && entry.Documents.Any(d => string.Equals(d.Number, number, StringComparison.Ordinal)));

    /// <summary>
    /// True where the record releases what it withdraws itself, by its own day or by a document that was issued on that day or
    /// later. Which of the two is wrong, a later record must say.
    /// </summary>
    private static bool IsOfItsOwn(Release release, KnownEntry entry, IReadOnlyList<KnownEntry> entries) =>
        (
            entry.DestroyedOn is not null
            || entry.Outcomes.Any(o =>
                o.Outcome is Outcome.Withdraw
                && (o.ExaminedOn ?? entry.Day) == entry.Day
                && o.Codes.Any(c => c is ['W', ..] and not "W10" and not "W11")
            )
        )
        && (
            release.WithdrawnOn == (entry.DestroyedOn ?? entry.Day)
            || release.WithdrawnOn == entry.Day
            || entries
                .Where(e => e.Day >= entry.Day)
                .SelectMany(e => e.Documents)
                .Any(d => string.Equals(d.Number, release.Document, StringComparison.Ordinal))
        );

    /// <summary>A release that names neither document nor day is of the earlier withdrawals that its own record has for the item.</summary>
    private static IEnumerable<Release> Named(Release release, KnownEntry entry) =>
        release is not { Document: null, WithdrawnOn: null }
            ? [release]
            : entry
                .Outcomes.Where(o => o.Outcome is Outcome.Withdraw && o.ExaminedOn < entry.Day)
                .Select(o => release with { WithdrawnOn = o.ExaminedOn });
}
