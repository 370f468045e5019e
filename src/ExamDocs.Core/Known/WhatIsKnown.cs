using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>A line of another visit about an item: a document that was issued for that line may have to end.</summary>
/// <param name="Item">Id in the record under check, of the same item or of a part that is on it.</param>
/// <param name="Visit">Number of the other visit.</param>
/// <param name="OtherId">Id there, as recorded.</param>
/// <param name="On">Day of the line.</param>
/// <param name="IsWhole">True where the line is about the item that this one is fitted to; false where it is the same item.</param>
public sealed record KnownLine(string Item, int Visit, string OtherId, LocalDate On, bool IsWhole);

/// <summary>
/// Finds in all other records, for each item of one record: which item it is, what is known of it, and what is fitted to what. It
/// takes visits in any order and gives plain data; it decides no outcome.
/// </summary>
public sealed class WhatIsKnown
{
    private readonly KnownVisit _visit;
    private readonly KnownItems _items;
    private readonly KnownFittings _fittings;
    private readonly KnownWithdrawals _withdrawals;
    private readonly KnownReleases _releases;

    private WhatIsKnown(KnownVisit visit, IReadOnlyList<KnownVisit> others)
    {
        (_visit, _items) = (visit, new KnownItems(visit, others));
        var facts = new FittingFacts(_items);
        _withdrawals = new KnownWithdrawals(visit.Record, _items, facts);
        _releases = new KnownReleases(_items);
        _fittings = new KnownFittings(_items, _withdrawals, facts);
        History = OfAll(others);
    }

    public History History { get; }

    /// <summary>Lines of other visits about the same items, and about the items that they are fitted to.</summary>
    public IReadOnlyList<KnownLine> Lines => field ??= _items.Past.Count == 0 ? [] : [.. _items.Current.SelectMany(LinesOf).Distinct()];

    /// <param name="record">The record under check.</param>
    /// <param name="others">Visits of other records, and other versions of this one; without this version itself.</param>
    public static WhatIsKnown Of(ExaminationRecord record, IEnumerable<KnownVisit> others)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(others);
        return new WhatIsKnown(new KnownVisit(int.MaxValue, record, []), [.. others]);
    }

    private History OfAll(IReadOnlyList<KnownVisit> others)
    {
        if (others.Count == 0 && _visit.Record.Items.All(i => i is { Formerly: null, NotTheSameAs.Count: 0 }))
            return History.None;
        var known = _items.Current.Select(e => (Entry: e, Same: _items.SameAs(e))).ToList();
        var aside = new KnownAside(_items, _withdrawals, _releases);
        var assemblies = new KnownAssemblies(_items, _fittings, aside);
        var questions = new KnownQuestions(_items, _fittings, aside);
        return new History([
            .. known
                .SelectMany(k => _withdrawals.Of(k.Entry.Item.Id!, k.Same, (visit, id) => IdHere(visit, id, IsSurely)!))
                .Distinct(new SameWithdrawal()),
        ])
        {
            Examinations = [.. known.SelectMany(k => Examinations(k.Entry, k.Same))],
            Releases = [.. known.SelectMany(k => _releases.Of(k.Entry.Item.Id!, k.Same)).Distinct()],
            Remedies = [.. known.SelectMany(k => _withdrawals.Remedies(k.Entry.Item.Id!, k.Same)).Distinct()],
            Renewals = [.. known.SelectMany(k => Renewals(k.Same)).Distinct().OrderBy(r => r.DoneOn)],
            Quarantines = [.. known.SelectMany(k => aside.Quarantines(k.Entry.Item.Id!, k.Same)).Distinct()],
            Fittings = [.. known.SelectMany(k => Fittings(k.Entry, k.Same)).Distinct()],
            Parts =
            [
                .. known
                    .SelectMany(k => assemblies.PartsOn(k.Entry))
                    .GroupBy(p => (p.Id, p.Whole, p.PartNumber))
                    .Select(KnownAssemblies.WorstOf),
            ],
            Wholes = [.. known.SelectMany(k => assemblies.WholesOf(k.Entry)).DistinctBy(w => (w.Id, w.Part))],
            Questions = [.. known.Where(k => !k.Entry.IsNameAlone).SelectMany(k => questions.Of(k.Entry))],
            Respellings = [.. known.Where(k => !k.Entry.IsNameAlone).SelectMany(k => Known.Respellings.Of(k.Entry, k.Same)).Distinct()],
            AnswerFaults = [.. known.SelectMany(k => _items.Answers.FaultsOf(k.Entry))],
            Elsewhere =
            [
                .. known
                    .Where(k => k.Entry.IsNameAlone && k.Same.Any(e => !e.IsNameAlone))
                    .Select(k => k.Entry.Item.Id!)
                    .Distinct(StringComparer.Ordinal),
            ],
            OtherNames = [.. known.Where(k => k.Entry.IsNameAlone).SelectMany(k => OtherNames(k.Entry, k.Same))],
            LeftOut = [.. LeftOutItems.Of(_visit.Record, _items, others)],
        };
    }

    /// <summary>
    /// Items of this record that may be what it names by an older id without a row. Another item may have had that id too.
    /// </summary>
    private IEnumerable<OtherName> OtherNames(KnownEntry name, IReadOnlyList<KnownEntry> same) =>
        same.Where(e => !e.IsNameAlone).ToList() is { Count: > 0 } rows
            ? _items
                .Current.Where(c => !c.IsNameAlone && rows.Exists(row => _items.SameAs(c).Contains(row)))
                .Select(c => new OtherName(name.Item.Id!, c.Item.Id!))
            : [];

    /// <summary>
    /// The earlier examinations, as recorded: of each day the version stored last. Those of this visit's day or later are left out.
    /// </summary>
    private IEnumerable<PastExamination> Examinations(KnownEntry entry, IReadOnlyList<KnownEntry> same) =>
        from e in same
        let record = e.Visit.Record
        from examination in record.Examinations
        where e.IsMine(examination.Item)
        let made = examination.DayAt(record.Visit)
        where made is not null && made < _visit.Record.Visit.ExaminedOn
        group (Entry: e, Examination: examination) by made.Value into day
        orderby day.Key
        let last = day.MaxBy(x => x.Entry.Visit.Number)
        select new PastExamination(
            entry.Item.Id!,
            day.Key,
            last.Entry.Documents.FirstOrDefault(d => d.Kind is "report")?.Number,
            last.Examination
        )
        {
            Remedies = [.. last.Entry.Visit.Record.Remedies.Where(r => last.Entry.IsMine(r.Item))],
            Renewals = [.. last.Entry.Visit.Record.Renewals.Where(r => last.Entry.IsMine(r.Item))],
        };

    private IEnumerable<Renewal> Renewals(IReadOnlyList<KnownEntry> same) =>
        from known in _withdrawals.Renewals(same)
        let r = known.Renewal
        select r with
        {
            Item = Renewed(known.Visit, r.Item),
            RemovedPart = Renewed(known.Visit, r.RemovedPart),
            FittedPart = Renewed(known.Visit, r.FittedPart),
        };

    private string? Renewed(KnownVisit visit, string? id) => IdHere(visit, id, _withdrawals.Renews);

    /// <summary>
    /// The id that this record has for an item of another record. Where this record has no such item, the id as typed there; where
    /// it has another item under that id, with the day of the other visit behind it.
    /// </summary>
    private string? IdHere(KnownVisit visit, string? id, Func<KnownEntry, IReadOnlyList<KnownEntry>, bool>? counts = null)
    {
        if (id is null)
            return null;
        foreach (var current in _items.Current)
        {
            var same = _items.SameAs(current);
            if (
                same.FirstOrDefault(e => ReferenceEquals(e.Visit, visit) && e.IsMine(id)) is { } there
                && (counts?.Invoke(there, same) ?? true)
            )
                return current.Item.Id;
        }
        return _items.Current.Any(c => !c.IsNameAlone && Folded.Same(c.Item.Id, id))
            ? $"{id} ({visit.Record.Visit.ExaminedOn:uuuu'-'MM'-'dd})"
            : id;
    }

    /// <summary>False where the id was only named there and may mean another item.</summary>
    private bool IsSurely(KnownEntry there, IReadOnlyList<KnownEntry> same) =>
        !there.IsNameAlone || _items.SameAs(there).All(e => e.IsNameAlone || same.Contains(e));

    private IEnumerable<PastFitting> Fittings(KnownEntry part, IReadOnlyList<KnownEntry> same)
    {
        var facts = _fittings.Of(same);
        var last = facts.Count == 0 ? null : facts[^1];
        IReadOnlyList<KnownEntry> all = [part, .. same];
        foreach (var whole in _fittings.WholesOf(all, upTo: part.Day))
            yield return new PastFitting(part.Item.Id!, IdHere(whole.Visit, whole.Item.Id)!, last?.On ?? part.Day, FittingWord.StillOn);
        // For a visit that is decided late, what was said up to its own day counts.
        if ((facts.LastOrDefault(f => !(f.On > part.Day)) ?? last) is { Kind: FittingKind.TakenOff } off)
            yield return new PastFitting(part.Item.Id!, IdHere(off.Whole.Visit, off.Whole.Item.Id)!, off.On, FittingWord.TakenOff);
        if (last is { Kind: not FittingKind.TakenOff } latest)
            yield return new PastFitting(part.Item.Id!, IdHere(latest.Whole.Visit, latest.Whole.Item.Id)!, latest.On, FittingWord.WasOn);
    }

    private IEnumerable<KnownLine> LinesOf(KnownEntry entry)
    {
        var same = _items.SameAs(entry);
        foreach (var e in same)
            yield return new KnownLine(entry.Item.Id!, e.Visit.Number, e.Item.Id!, e.Day, IsWhole: false);
        foreach (
            var whole in _fittings
                .WholesOf([entry, .. same])
                .SelectMany(w => _items.SameAs(w).Append(w))
                .Where(w => !w.IsCurrent)
                .Distinct()
        )
            yield return new KnownLine(entry.Item.Id!, whole.Visit.Number, whole.Item.Id!, whole.Day, IsWhole: true);
    }
}
