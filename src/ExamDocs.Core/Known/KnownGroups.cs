using System.Globalization;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>
/// Visits split into groups of rows that share no key of <see cref="ItemKeys"/> with one another, directly or by way of others: what one
/// group says can tell nothing about an item of another. Whoever asks about many items then looks at the rows of each one's group, not
/// at all rows of the visits that name it.
/// </summary>
public sealed class KnownGroups
{
    private readonly IReadOnlyList<KnownVisit> _visits;
    private readonly JoinedNames _names = new();
    private readonly Dictionary<int, List<KnownVisit>> _groups = [];

    /// <param name="visits">All visits, in any order; those of a group are given in this order.</param>
    public KnownGroups(IReadOnlyList<KnownVisit> visits)
    {
        ArgumentNullException.ThrowIfNull(visits);
        _visits = visits;
        foreach (var visit in visits)
            Join(visit);
        foreach (var visit in visits)
            Split(visit);
    }

    /// <summary>
    /// What the visits say of the items that a record names, and of what shares a key with them. Each visit has its other rows left out.
    /// </summary>
    public IReadOnlyList<KnownVisit> Touching(ExaminationRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var groups = ItemKeys
            .Of(record)
            .SelectMany(k => new[] { k.Key, Typed(k.Item) })
            .Select(name => _names.Find(name) ?? -1)
            .Where(_groups.ContainsKey)
            .Distinct()
            .ToList();
        if (groups is [var only])
            return _groups[only];
        // A record that joins several groups needs rows of a visit side by side again: the visits are then given whole.
        var touched = groups.SelectMany(g => _groups[g]).Select(v => v.Number).ToHashSet();
        return [.. _visits.Where(v => touched.Contains(v.Number))];
    }

    private void Join(KnownVisit visit)
    {
        foreach (var (item, key) in ItemKeys.Of(visit.Record))
            _names.Join(item.Length == 0 ? Unnamed(visit) : Typed(item), key);
    }

    private void Split(KnownVisit visit)
    {
        var (record, rows) = (visit.Record, new Dictionary<int, Rows>());
        foreach (var item in record.Items)
            Of(item.Id).Items.Add(item);
        foreach (var examination in record.Examinations)
            Of(examination.Item).Examinations.Add(examination);
        foreach (var renewal in record.Renewals)
            Of(renewal.Item).Renewals.Add(renewal);
        foreach (var remedy in record.Remedies)
            Of(remedy.Item).Remedies.Add(remedy);
        foreach (var release in record.Releases)
            Of(release.Item).Releases.Add(release);
        foreach (var disposal in record.Disposals)
            Of(disposal.Item).Disposals.Add(disposal);
        foreach (var outcome in visit.Outcomes)
            Of(outcome.Item).Outcomes.Add(outcome);
        foreach (var (group, own) in rows)
        {
            if (!_groups.TryGetValue(group, out var visits))
                _groups[group] = visits = [];
            visits.Add(own.In(visit));
        }

        Rows Of(string? item)
        {
            var group = _names.GroupOf(string.IsNullOrEmpty(item) ? Unnamed(visit) : Typed(item));
            if (!rows.TryGetValue(group, out var own))
                rows[group] = own = new Rows();
            return own;
        }
    }

    /// <summary>An id as typed is one item in all visits, as it is where a register looks for visits that touch a record.</summary>
    internal static string Typed(string item) => "t:" + item;

    /// <summary>An item without an id is another one in every visit.</summary>
    private static string Unnamed(KnownVisit visit) => "v:" + visit.Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The rows of one group in one visit.</summary>
    private sealed class Rows
    {
        public List<Item> Items { get; } = [];

        public List<Examination> Examinations { get; } = [];

        public List<Renewal> Renewals { get; } = [];

        public List<Remedy> Remedies { get; } = [];

        public List<Release> Releases { get; } = [];

        public List<Disposal> Disposals { get; } = [];

        public List<KnownOutcome> Outcomes { get; } = [];

        public KnownVisit In(KnownVisit visit) =>
            new(
                visit.Number,
                visit.Record with
                {
                    Items = Items,
                    Examinations = Examinations,
                    Renewals = Renewals,
                    Remedies = Remedies,
                    Releases = Releases,
                    Disposals = Disposals,
                },
                Outcomes
            )
            {
                IsUndecided = visit.IsUndecided,
            };
    }
}
