using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Registered;

/// <summary>One thing on record: the entries about it, and what a visit of this day would know of it.</summary>
internal sealed class ThingOnRecord
{
    /// <param name="entries">All about it; at least one.</param>
    /// <param name="known">What a visit of this day would know of it.</param>
    public ThingOnRecord(IReadOnlyList<ItemEntry> entries, KnownToday known)
    {
        Known = known;
        Entries = [.. entries.OrderByDescending(e => e.Day).ThenByDescending(Weight).ThenByDescending(e => e.Visit.Visit)];
        Counting = [.. Entries.Where(e => !Entries.Any(later => IsReplacedBy(e, later)))];
        Rows = [.. Counting.Union(Entries).Where(e => e.HasRow).DefaultIfEmpty(Entries[0])];
    }

    /// <summary>The latest first.</summary>
    public IReadOnlyList<ItemEntry> Entries { get; }

    public KnownToday Known { get; }

    /// <summary>The entries that say something of the item itself, the latest and those that count first; at least one.</summary>
    public IReadOnlyList<ItemEntry> Rows { get; }

    public string? Owner => Entries.Select(e => e.Owner).FirstOrDefault(o => FirmName.Fold(o).Length > 0);

    /// <summary>The entries that no later version of their visit replaces, the latest first.</summary>
    public IReadOnlyList<ItemEntry> Counting { get; }

    /// <summary>Both as one.</summary>
    public ThingOnRecord And(ThingOnRecord other) => new([.. Entries.Union(other.Entries)], Known.And(other.Known));

    public bool Has(ItemEntry entry) => Entries.Contains(entry);

    /// <summary>
    /// True where it is under an id and owner of this one, and no serial number, owner's mark or date of manufacture tells them apart.
    /// </summary>
    public bool MayBeUnderOneTag(ItemEntry entry) =>
        Rows.Any(row => Folded.Same(row.Item.Id, entry.Item.Id) && FirmName.MayBeSame(row.Owner, entry.Owner))
        && Rows.All(row =>
            !SerialKeys.Differ(row.Item.Serial, entry.Item.Serial)
            && !Folded.Differ(row.Item.OwnersMark, entry.Item.OwnersMark)
            && !Folded.Differ(row.Item.Manufactured?.ToString(), entry.Item.Manufactured?.ToString())
        );

    /// <summary>
    /// Whether both can be one thing under two tags: serial number, maker and category do not tell them apart, and nobody said that
    /// they are two.
    /// </summary>
    public bool MayBe(ThingOnRecord other) =>
        !IsToldFrom(other)
        && !other.IsToldFrom(this)
        && Rows.Any(mine =>
            other.Rows.Any(theirs =>
                SerialKeys.Same(mine.Item.Serial, theirs.Item.Serial)
                && !Folded.Differ(mine.Item.Category, theirs.Item.Category)
                && (mine.Item.Maker is null || theirs.Item.Maker is null || IsOneMaker(mine.Item.Maker, theirs.Item.Maker))
            )
        );

    private bool IsToldFrom(ThingOnRecord other) => Answers.Any(told => other.Rows.Any(theirs => Folded.Same(told.Id, theirs.Item.Id)));

    /// <summary>What it was said not to be, by records that no later version took it back from.</summary>
    private IEnumerable<DifferentItem> Answers => Rows.SelectMany(AnswersOf);

    /// <summary>The same, by one of its entries.</summary>
    public IReadOnlyList<DifferentItem> AnswersOf(ItemEntry entry) => IsCorrected(entry, Entries) ? [] : entry.Item.NotTheSameAs;

    public static bool IsOneMaker(string? one, string? other) => Folded.Same(one, other) || FirmName.Same(one, other);

    /// <summary>
    /// True where a later version of the visit, of a day near it, has a row for it, under this id or a new one: what told it from others
    /// counts only if that one says it too.
    /// </summary>
    public static bool IsCorrected(ItemEntry entry, IEnumerable<ItemEntry> called) =>
        called.Any(later =>
            later.HasRow
            && later.Visit.Visit > entry.Visit.Visit
            && (Folded.Same(later.Item.Id, entry.Item.Id) || Folded.Same(later.Item.Formerly, entry.Item.Id))
            && KnownVisit.AreVersions(later.Record, entry.Record)
        );

    /// <summary>
    /// A later version of a visit replaces what the earlier one said of an item that it examined. A worse outcome of a much later day is
    /// rather that of another visit, whose reference was used twice.
    /// </summary>
    public static bool IsReplacedBy(ItemEntry entry, ItemEntry later) =>
        later.Visit.Visit > entry.Visit.Visit
        && later.Outcome.ExaminedOn is not null
        && KnownVisit.IsOneVisit(later.Record, entry.Record)
        // What was recorded without an examination on a day after this one, such as a loss, is news.
        && !(entry.Outcome.ExaminedOn is null && entry.Day > later.Day)
        && (entry.Day <= later.Day.PlusMonths(1) || entry.Badness <= later.Badness);

    /// <summary>Of several decisions of one day the worst counts, unless it is a withdrawal that has ended.</summary>
    private int Weight(ItemEntry entry) => entry.IsOf(Outcome.Withdraw) && Known.Withdrawals.Count == 0 ? -1 : (int)entry.Badness;
}
