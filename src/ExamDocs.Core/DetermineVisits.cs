using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Core;

/// <summary>A visit of a run: read, not decided yet.</summary>
/// <param name="Record">What was recorded.</param>
/// <param name="Reading">What reading found wrong with it.</param>
/// <param name="Key">The same whenever the same record is read: a record is no history of itself.</param>
public sealed record VisitToDecide(ExaminationRecord Record, IReadOnlyList<Finding> Reading, string Key);

/// <summary>A visit decided.</summary>
/// <param name="Visit">The visit with its outcomes.</param>
/// <param name="Lines">Lines of other visits about its items, and about the items that these are fitted to.</param>
public sealed record DecidedVisit(DeterminedVisit Visit, IReadOnlyList<KnownLine> Lines);

/// <summary>Where earlier visits are kept.</summary>
public interface IKnownVisits
{
    /// <summary>The register that is asked; null where none is.</summary>
    RegisterConsulted? Asked { get; }

    /// <summary>Visits whose items may be those of a record, in any order; earlier readings of the same record left out.</summary>
    IReadOnlyList<KnownVisit> Touching(VisitToDecide visit);
}

/// <summary>
/// Decides the visits of one run together: each knows the outcomes of the others, whatever their order and their files. Deciding is
/// repeated until nothing changes. What becomes known only ever makes an outcome worse, so this ends.
/// </summary>
public sealed class DetermineVisits
{
    /// <summary>First number of the run's own visits: they count as later than all visits of a register.</summary>
    private const int FirstOfRun = 1_000_000_000;

    private readonly IReadOnlyList<VisitToDecide> _visits;
    private readonly IKnownVisits? _known;
    private readonly LocalDate _asOf;
    private readonly KnownRules? _rules;
    private readonly KeyIndex _index = new();
    private readonly IReadOnlyList<KnownVisit>[] _before;
    private readonly (DecidedVisit Decided, string History)[] _state;

    private DetermineVisits(IReadOnlyList<VisitToDecide> visits, IKnownVisits? known, LocalDate asOf, KnownRules? rules)
    {
        (_visits, _known, _asOf, _rules) = (visits, known, asOf, rules);
        _before = [.. visits.Select(v => known?.Touching(v) ?? [])];
        _state = new (DecidedVisit, string)[visits.Count];
    }

    /// <param name="visits">The visits of the run, in any order; but of two versions of one visit the later one second.</param>
    /// <param name="known">Where earlier visits are kept; null where nothing is.</param>
    /// <param name="asOf">The day on which they are determined.</param>
    /// <param name="rules">The categories and regimes that they can name; if left out, the built-in ones.</param>
    /// <returns>In the order given.</returns>
    public static IReadOnlyList<DecidedVisit> Of(
        IReadOnlyList<VisitToDecide> visits,
        IKnownVisits? known,
        LocalDate asOf,
        KnownRules? rules = null
    )
    {
        ArgumentNullException.ThrowIfNull(visits);
        return new DetermineVisits(visits, known, asOf, rules).Run();
    }

    private IReadOnlyList<DecidedVisit> Run()
    {
        if (_visits.Count > 1)
            Together();
        for (var n = 0; n < _visits.Count; n++)
        {
            if (_state[n].Decided is null)
                Decide(n, _before[n]);
        }
        return [.. _state.Select(s => s.Decided)];
    }

    private void Together()
    {
        for (var n = 0; n < _visits.Count; n++)
            _index.Add(n, _visits[n].Record);
        var mates = Enumerable.Range(0, _visits.Count).Select(MatesOf).ToList();
        var order = Enumerable
            .Range(0, _visits.Count)
            .Where(n => mates[n].Count > 0)
            .OrderBy(n => _visits[n].Record.Visit.ExaminedOn ?? LocalDate.MinIsoValue)
            .ToList();
        // Each visit first sees the others as undecided, which counts against no item. Starting from the mildest view makes the
        // result the same in any order.
        var remembered = _visits.Select((v, n) => new KnownVisit(FirstOfRun + n, v.Record, []) { IsUndecided = true }).ToArray();
        for (var (round, changed) = (0, true); changed && round < _visits.Count + 4; round++)
        {
            changed = false;
            foreach (var n in order)
            {
                var others = _before[n]
                    .Concat(mates[n].SelectMany(m => _before[m]))
                    .DistinctBy(v => v.Number)
                    .Concat(mates[n].Select(m => remembered[m]))
                    .ToList();
                if (!Decide(n, others))
                    continue;
                (changed, remembered[n]) = (true, Remembered(n, _state[n].Decided.Visit));
            }
        }
    }

    /// <summary>Other visits of the run that may have the same items, found directly or by way of earlier visits.</summary>
    private List<int> MatesOf(int n) =>
        [
            .. _before[n]
                .Select(v => v.Record)
                .Append(_visits[n].Record)
                .SelectMany(_index.Touching)
                .Distinct()
                .Where(m => m != n && !string.Equals(_visits[m].Key, _visits[n].Key, StringComparison.Ordinal)),
        ];

    /// <summary>Place of a visit in the run, by its number; null for a visit of a register.</summary>
    public static int? PlaceInRun(int number) => number >= FirstOfRun ? number - FirstOfRun : null;

    /// <returns>False where nothing more was known than when it was last decided.</returns>
    private bool Decide(int n, IReadOnlyList<KnownVisit> others)
    {
        var known = WhatIsKnown.Of(_visits[n].Record, others);
        // One visit alone is decided once: there is nothing to compare with.
        var text = _visits.Count > 1 ? JsonSerializer.Serialize(known.History, RuleJson.Options) : "";
        if (string.Equals(text, _state[n].History, StringComparison.Ordinal))
            return false;
        var visit = Determine.Visit(_visits[n].Record, _visits[n].Reading, known.History with { Asked = _known?.Asked }, _asOf, _rules);
        _state[n] = (new DecidedVisit(visit, known.Lines), text);
        return true;
    }

    private static KnownVisit Remembered(int n, DeterminedVisit visit) => new(FirstOfRun + n, visit.Recorded, KnownOutcomes.Of(visit));
}

/// <summary>What other visits may know of a determined visit.</summary>
public static class KnownOutcomes
{
    public static IReadOnlyList<KnownOutcome> Of(DeterminedVisit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return [.. visit.Everything.SelectMany(item => Before(item).Append(Of(item)))];
    }

    /// <summary>Earlier withdrawals that the record itself holds: later records need not hold them again.</summary>
    private static IEnumerable<KnownOutcome> Before(DeterminedItem item) =>
        item.WithdrawnBefore.Select(w => new KnownOutcome(item.Item.Id, Outcome.Withdraw, w.Codes)
        {
            ExaminedOn = w.On,
            NeverReleasable = w.NeverReleasable,
        });

    public static KnownOutcome Of(DeterminedItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return new KnownOutcome(item.Item.Id, item.Outcome, [.. item.Reasons.Select(r => r.Code).Distinct(StringComparer.Ordinal)])
        {
            ExaminedOn = item.ExaminedOn,
            Until = item.Until,
            NextBy = item.NextExaminationBy,
            Parts =
                item.Outcome is Outcome.Withdraw
                    ?
                    [
                        .. item
                            .Reasons.Where(r => r.Code is "W8" or "W9")
                            .Select(r => r.Other)
                            .OfType<string>()
                            .Distinct(StringComparer.Ordinal),
                    ]
                    : [],
            NeverReleasable = item.Outcome is Outcome.Withdraw && item.NeverReleasableByItself,
        };
    }
}
