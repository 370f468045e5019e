using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Cases;

/// <summary>
/// Cuts out of a record what can bear on some of its items: every row that shares a key of <see cref="ItemKeys"/> or an owner's mark with
/// them, directly or by way of others, and every row that names no item of the record, since nobody can say whose it is. A row that is
/// left out may still decide. Whoever uses a slice must determine the items from it again, and compare with the whole record.
/// </summary>
public sealed class RecordSlices
{
    private const string WithoutId = "v:";

    private readonly ExaminationRecord _record;
    private readonly IReadOnlyList<Finding> _reading;
    private readonly History _history;
    private readonly JoinedNames _names = new();
    private readonly HashSet<string> _ids;
    private readonly HashSet<(string, string)?> _models;
    private readonly GroupedRows<Item> _items;
    private readonly GroupedRows<Examination> _examinations;
    private readonly GroupedRows<Renewal> _renewals;
    private readonly GroupedRows<Remedy> _remedies;
    private readonly GroupedRows<Release> _releases;
    private readonly GroupedRows<Disposal> _disposals;

    /// <param name="record">The record, as typed.</param>
    /// <param name="reading">What reading it had found.</param>
    /// <param name="history">What other records know of its items.</param>
    public RecordSlices(ExaminationRecord record, IReadOnlyList<Finding> reading, History history)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(history);
        (_record, _reading, _history) = (record, reading, history);
        _ids = record.Items.Select(i => i.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var (item, key) in ItemKeys.Of(record).Concat(ItemKeys.Of(new ExaminationRecord { Renewals = history.Renewals })))
            _names.Join(Name(item), key);
        foreach (var item in record.Items)
        {
            foreach (var mark in Folded.Keys(item.OwnersMark))
                _names.Join(Name(item.Id), "m:" + mark);
        }
        foreach (var fitting in history.Fittings)
            _names.Join(Name(fitting.Part), Name(fitting.Whole));
        foreach (var other in history.OtherNames)
            _names.Join(Name(other.Name), Name(other.Id));
        _models = record.Limits.Select(l => Model(l.Maker, l.Model)).ToHashSet();
        _items = new(record.Items, i => GroupOf(i.Id));
        _examinations = new(record.Examinations, e => GroupOf(e.Item));
        _renewals = new(record.Renewals, r => GroupOf(r.Item));
        _remedies = new(record.Remedies, r => GroupOf(r.Item));
        _releases = new(record.Releases, r => GroupOf(r.Item));
        _disposals = new(record.Disposals, d => GroupOf(d.Item));
    }

    /// <summary>The slice of some items.</summary>
    /// <param name="ids">Their ids as typed; null or empty for an item without one.</param>
    public RecordSlice Of(IEnumerable<string?> ids)
    {
        var groups = ids.Select(id => _names.GroupOf(Name(id))).ToHashSet();
        var items = _items.In(groups);
        var limits = KeptRows.Of(_record.Limits, MayApplyTo(items.Rows));
        var (examinations, renewals, remedies) = (_examinations.In(groups), _renewals.In(groups), _remedies.In(groups));
        var (releases, disposals) = (_releases.In(groups), _disposals.In(groups));
        var record = _record with
        {
            Items = items.Rows,
            Limits = limits.Rows,
            Examinations = examinations.Rows,
            Renewals = renewals.Rows,
            Remedies = remedies.Rows,
            Releases = releases.Rows,
            Disposals = disposals.Rows,
        };
        var places = new SlicedPlaces(
            ("items", items.Places),
            ("limits", limits.Places),
            ("examinations", examinations.Places),
            ("renewals", renewals.Places),
            ("remedies", remedies.Places),
            ("releases", releases.Places),
            ("disposals", disposals.Places)
        );
        return new RecordSlice(record, [.. places.InSlice(_reading)], KnownOf(Bears), places);

        // What names several things bears on the slice where one of them does, or where none of them is an item of the record.
        bool Bears(IEnumerable<string?> named)
        {
            var own = named.OfType<string>().Where(_ids.Contains).ToList();
            return own.Count == 0 || own.Exists(id => groups.Contains(_names.GroupOf(Name(id))));
        }
    }

    /// <summary>
    /// All entries for the models of the items, and those without a model, which may be for any; all where an item has none, since it may
    /// have missed one by its spelling.
    /// </summary>
    private Func<MakersLimits, bool> MayApplyTo(IReadOnlyList<Item> items)
    {
        var models = items.Select(i => Model(i.Maker, i.Model)).ToHashSet();
        return models.All(m => m is not null && _models.Contains(m))
            ? limits => Model(limits.Maker, limits.Model) is not { } model || models.Contains(model)
            : _ => true;
    }

    private static (string, string)? Model(string? maker, string? model) =>
        maker is not null && model is not null ? LimitsIndex.Key(maker, model) : null;

    private History KnownOf(Func<IEnumerable<string?>, bool> bears) =>
        _history with
        {
            Withdrawals = [.. _history.Withdrawals.Where(w => bears([w.ItemId]))],
            Examinations = [.. _history.Examinations.Where(e => bears([e.ItemId]))],
            Releases = [.. _history.Releases.Where(r => bears([r.ItemId]))],
            Remedies = [.. _history.Remedies.Where(r => bears([r.Item]))],
            Renewals = [.. _history.Renewals.Where(r => bears([r.Item, r.RemovedPart, r.FittedPart]))],
            Quarantines = [.. _history.Quarantines.Where(q => bears([q.Item]))],
            Fittings = [.. _history.Fittings.Where(f => bears([f.Part, f.Whole]))],
            Parts = [.. _history.Parts.Where(p => bears([p.Whole]))],
            Wholes = [.. _history.Wholes.Where(w => bears([w.Part]))],
            Questions = [.. _history.Questions.Where(q => bears([q.ItemId]))],
            Respellings = [.. _history.Respellings.Where(r => bears([r.ItemId]))],
            AnswerFaults = [.. _history.AnswerFaults.Where(f => bears([f.ItemId]))],
            OtherNames = [.. _history.OtherNames.Where(n => bears([n.Id]))],
        };

    /// <summary>Null for a row that is nobody's: it names no item of the record.</summary>
    private int? GroupOf(string? id) => id is not null && _ids.Contains(id) ? _names.GroupOf(Name(id)) : null;

    private static string Name(string? id) => string.IsNullOrEmpty(id) ? WithoutId : KnownGroups.Typed(id);
}
