using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Core;

/// <summary>A visit of a run, read and not decided yet.</summary>
/// <param name="Record">What was recorded.</param>
/// <param name="Reading">What reading found wrong with it.</param>
/// <param name="Key">The same for the same record read again: what is known of it before is not history.</param>
public sealed record VisitToDecide(ExaminationRecord Record, IReadOnlyList<Finding> Reading, string Key);

/// <summary>A visit decided.</summary>
/// <param name="Visit">With its outcomes.</param>
/// <param name="Lines">Lines of other visits about its items, and about what these are fitted to.</param>
public sealed record DecidedVisit(DeterminedVisit Visit, IReadOnlyList<KnownLine> Lines);

/// <summary>Where visits from before are remembered.</summary>
public interface IKnownVisits
{
    /// <summary>Null where no register is asked.</summary>
    RegisterConsulted? Asked { get; }

    /// <summary>Visits that a record may have to do with, in any order; the same record read before left out.</summary>
    IReadOnlyList<KnownVisit> Touching(VisitToDecide visit);
}

/// <summary>
/// Decides the visits of one run together: each knows what the others came to, whatever their order and their files. It is
/// repeated until nothing changes; what is known only ever makes an outcome worse, so this ends.
/// </summary>
public sealed class DetermineVisits
{
    /// <summary>Numbers of the run's own visits: they come after all that a register holds.</summary>
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

    /// <param name="visits">The visits of the run, in any order; of two versions of one visit the later one after the other.</param>
    /// <param name="known">What is remembered from before; null for nothing.</param>
    /// <param name="asOf">The day on which they are looked at.</param>
    /// <param name="rules">The categories and regimes they can name; left out, those built in.</param>
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
        // The most favourable view first: what is known only ever makes it worse.
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

    /// <summary>Other visits of the run that it may have to do with, over visits from before too.</summary>
    private List<int> MatesOf(int n) =>
        [
            .. _before[n]
                .Select(v => v.Record)
                .Append(_visits[n].Record)
                .SelectMany(_index.Touching)
                .Distinct()
                .Where(m => m != n && !string.Equals(_visits[m].Key, _visits[n].Key, StringComparison.Ordinal)),
        ];

    /// <summary>Place in the run of a visit that has a number of the run; null for one of a register.</summary>
    public static int? PlaceInRun(int number) => number >= FirstOfRun ? number - FirstOfRun : null;

    /// <returns>False where it was decided on the same before.</returns>
    private bool Decide(int n, IReadOnlyList<KnownVisit> others)
    {
        var known = WhatIsKnown.Of(_visits[n].Record, others);
        var text = JsonSerializer.Serialize(known.History, RuleJson.Options);
        if (string.Equals(text, _state[n].History, StringComparison.Ordinal))
            return false;
        var visit = Determine.Visit(_visits[n].Record, _visits[n].Reading, known.History with { Asked = _known?.Asked }, _asOf, _rules);
        _state[n] = (new DecidedVisit(visit, known.Lines), text);
        return true;
    }

    private static KnownVisit Remembered(int n, DeterminedVisit visit) => new(FirstOfRun + n, visit.Recorded, KnownOutcomes.Of(visit));
}

/// <summary>What is to be known of a determined visit by others.</summary>
public static class KnownOutcomes
{
    public static IReadOnlyList<KnownOutcome> Of(DeterminedVisit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return [.. visit.Everything.SelectMany(item => Before(item).Append(Of(item)))];
    }

    /// <summary>What the record itself tells of withdrawals from before: the records that follow need not tell of them again.</summary>
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
