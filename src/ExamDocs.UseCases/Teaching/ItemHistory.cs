using System.Globalization;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Teaching;

/// <summary>One examination of an item, and what was decided on it.</summary>
/// <param name="Day">Of the examination.</param>
/// <param name="MayServe">It was found fit, if only until a day.</param>
/// <param name="IsWorn">It was withdrawn for what was found on it: a defect, a doubt, a diameter.</param>
/// <param name="Recorded">As recorded; null where the record has none of that day.</param>
/// <param name="Examiner">By name, else by the id that only this record has for the person; null where not recorded.</param>
internal sealed record LookedAt(LocalDate Day, bool MayServe, bool IsWorn, Examination? Recorded, string? Examiner);

/// <summary>The examinations of one item, from the first on record to the last; a corrected visit counts as corrected.</summary>
internal sealed class ItemHistory
{
    /// <summary>The outcome rules by which something found on the item withdraws it; not age, a part, or an earlier withdrawal.</summary>
    private static readonly string[] WornCodes = ["W1", "W2", "W3", "W4", "W7"];

    private readonly Item _row;
    private readonly IReadOnlyList<Exposure> _exposures;

    /// <param name="entries">What the visits recorded of it, in any order, each with an examination; at least one.</param>
    /// <param name="watchedSince">The first day on which kit of its owner is on record.</param>
    public ItemHistory(IReadOnlyList<ItemEntry> entries, LocalDate watchedSince)
    {
        WatchedSince = watchedSince;
        Visits = [.. entries.Select(VisitOf)];
        Examined = [.. entries.Select(Look).OrderBy(l => l.Day)];
        _row = entries.MaxBy(e => e.Day)!.Item;
        FirstUsed = entries.Select(e => e.Item.FirstUsed).FirstOrDefault(d => d?.Month is not null)?.Earliest;
        _exposures = [.. Examined.Select(l => l.Recorded?.Exposure).OfType<Exposure>().Reverse()];
        // It came back where an examination after it let it serve: then that withdrawal did not end its service.
        var stays = Examined.Reverse().TakeWhile(l => !l.MayServe).ToList();
        End = stays.FindLast(l => l.IsWorn);
    }

    public IReadOnlyList<LookedAt> Examined { get; }

    /// <summary>The visits that examined it, a text for each: all versions of one visit have the same.</summary>
    public IReadOnlyList<string> Visits { get; }

    /// <summary>The examination that ended its service for wear or a defect; null where none did.</summary>
    public LookedAt? End { get; }

    /// <summary>The first day of its use; null where not even the month is known.</summary>
    public LocalDate? FirstUsed { get; }

    public LocalDate WatchedSince { get; }

    public string? Category => _row.Category;

    public string? Model => _row.Model is null ? null : string.Join(' ', new[] { _row.Maker, _row.Model }.OfType<string>());

    public string? Hardware => _exposures.Select(e => Word(e.Hardware)).FirstOrDefault(h => h is not null);

    public string? Ground => _exposures.Select(e => Word(e.Ground)).FirstOrDefault(g => g is not null);

    public bool IsBridge => Category is "rope-bridge";

    /// <summary>Months of 30.4375 days from its first use.</summary>
    public double? MonthsAt(LocalDate day) =>
        FirstUsed is { } first && first <= day ? Period.Between(first, day, PeriodUnits.Days).Days / 30.4375 : null;

    private static string VisitOf(ItemEntry entry) =>
        Folded.Keys(entry.Visit.Reference) is [var reference, ..]
            ? $"{reference}\n{FirmName.Fold(entry.Visit.Employer)}"
            : entry.Visit.Visit.ToString(CultureInfo.InvariantCulture);

    private static LookedAt Look(ItemEntry entry)
    {
        var day = entry.Outcome.ExaminedOn!.Value;
        var recorded = entry.Record.Examinations.LastOrDefault(e =>
            string.Equals(e.Item, entry.Item.Id, StringComparison.Ordinal) && e.DayAt(entry.Record.Visit) == day
        );
        return new LookedAt(
            day,
            entry.IsOf(Outcome.Fit) || entry.IsOf(Outcome.FitUntil),
            entry.IsOf(Outcome.Withdraw) && entry.Outcome.Codes.Intersect(WornCodes, StringComparer.Ordinal).Any(),
            recorded,
            entry.Record.People.FirstOrDefault(p => Folded.Same(p.Id, recorded?.Examiner))?.Name ?? recorded?.Examiner
        );
    }

    /// <summary>One spelling for words that differ in capitals and blanks alone.</summary>
    private static string? Word(string? typed) =>
        string.IsNullOrWhiteSpace(typed)
            ? null
            : string.Join(' ', typed.ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>Puts together what visits recorded of one item.</summary>
internal static class ItemHistories
{
    /// <summary>
    /// One for each id of an owner; two where the serial numbers differ. To count it is enough: what may be used is not decided by it.
    /// </summary>
    /// <param name="entries">All of the register.</param>
    /// <param name="employer">Whose kit; null for everybody's.</param>
    public static IReadOnlyList<ItemHistory> Of(IReadOnlyList<ItemEntry> entries, string? employer)
    {
        var ids = new FoldedIds();
        var counting = entries
            .Where(e => e.HasRow && e.Outcome.ExaminedOn is not null && (employer is null || FirmName.Same(e.Owner, employer)))
            .ToList();
        var since = counting
            .GroupBy(Owner, StringComparer.Ordinal)
            .ToDictionary(o => o.Key, o => o.Min(e => e.Day), StringComparer.Ordinal);
        return
        [
            .. from tag in counting.GroupBy(e => (Owner(e), ids.Of(e.Item.Id!)))
            from thing in Things([.. tag])
            select new ItemHistory(thing, since[tag.Key.Item1]),
        ];
    }

    private static string Owner(ItemEntry entry) => FirmName.Fold(entry.Owner);

    private static List<List<ItemEntry>> Things(IReadOnlyList<ItemEntry> tag)
    {
        var things = new List<List<ItemEntry>>();
        foreach (var entry in tag.Where(e => !tag.Any(later => ThingOnRecord.IsReplacedBy(e, later))).OrderBy(e => e.Day))
        {
            // Where its serial number is left out, it is the one that was recorded last under this id.
            if (things.FindAll(t => t.TrueForAll(e => !Folded.Differ(e.Item.Serial, entry.Item.Serial))).MaxBy(t => t[^1].Day) is { } thing)
                thing.Add(entry);
            else
                things.Add([entry]);
        }
        return things;
    }
}
