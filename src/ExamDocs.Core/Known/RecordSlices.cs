using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Known;

/// <summary>
/// Cuts out of a record what can bear on some of its items: every row that shares a key of <see cref="ItemKeys"/> or an owner's mark with
/// them, directly or by way of others, and every row that names no item of the record, since nobody can say whose it is. Whether an
/// outcome rests on no other row is not known here: whoever uses a slice determines it again and compares.
/// </summary>
public sealed class RecordSlices
{
    private const string WithoutId = "v:";

    private readonly ExaminationRecord _record;
    private readonly IReadOnlyList<Finding> _reading;
    private readonly History _history;
    private readonly JoinedNames _names = new();
    private readonly HashSet<string> _ids;

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
    }

    /// <summary>The slice of some items.</summary>
    /// <param name="ids">Their ids as typed; null or empty for an item without one.</param>
    public RecordSlice Of(IEnumerable<string?> ids)
    {
        var groups = ids.Select(id => _names.GroupOf(Name(id))).ToHashSet();
        // What names several things bears on the slice where one of them does, or where none of them is an item of the record.
        bool Bears(IEnumerable<string?> named)
        {
            var own = named.OfType<string>().Where(_ids.Contains).ToList();
            return own.Count == 0 || own.Exists(id => groups.Contains(_names.GroupOf(Name(id))));
        }
        bool IsOf(string? id) => Bears([id]);
        var items = KeptRows.Of(_record.Items, i => IsOf(i.Id));
        var limits = KeptRows.Of(_record.Limits, MayApplyTo(items.Rows));
        var examinations = KeptRows.Of(_record.Examinations, e => IsOf(e.Item));
        var renewals = KeptRows.Of(_record.Renewals, r => IsOf(r.Item));
        var remedies = KeptRows.Of(_record.Remedies, r => IsOf(r.Item));
        var releases = KeptRows.Of(_record.Releases, r => IsOf(r.Item));
        var disposals = KeptRows.Of(_record.Disposals, d => IsOf(d.Item));
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
    }

    /// <summary>
    /// All entries for the models of the items, and those without a model, which may be for any; all where an item has none, since it may
    /// have missed one by its spelling.
    /// </summary>
    private Func<MakersLimits, bool> MayApplyTo(IReadOnlyList<Item> items)
    {
        var models = items.Select(i => Model(i.Maker, i.Model)).ToHashSet();
        var known = _record.Limits.Select(l => Model(l.Maker, l.Model)).ToHashSet();
        return models.All(m => m is not null && known.Contains(m))
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
            Fittings = [.. _history.Fittings.Where(f => bears([f.Part, f.Whole]))],
            Parts = [.. _history.Parts.Where(p => bears([p.Whole]))],
            Wholes = [.. _history.Wholes.Where(w => bears([w.Part]))],
            Questions = [.. _history.Questions.Where(q => bears([q.ItemId]))],
            Respellings = [.. _history.Respellings.Where(r => bears([r.ItemId]))],
            AnswerFaults = [.. _history.AnswerFaults.Where(f => bears([f.ItemId]))],
            OtherNames = [.. _history.OtherNames.Where(n => bears([n.Id]))],
        };

    private static string Name(string? id) => string.IsNullOrEmpty(id) ? WithoutId : KnownGroups.Typed(id);
}
