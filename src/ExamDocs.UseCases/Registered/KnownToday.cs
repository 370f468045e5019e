using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>What a visit of this day would know of an item before anybody looked at it.</summary>
/// <param name="Same">The other visits that recorded it, each with the id it had there.</param>
/// <param name="Withdrawals">Why it is withdrawn, apart from what is fitted to it; empty where it is not.</param>
/// <param name="IsDestroyed">It was recorded as destroyed.</param>
/// <param name="Quarantined">The days of quarantines that nothing has ended.</param>
/// <param name="Questions">Which withdrawn or held items it may be, in words.</param>
/// <param name="MayBe">The ids of these.</param>
/// <param name="Parts">What is fitted to it.</param>
internal sealed record KnownToday(
    IReadOnlyList<(int Visit, string Id)> Same,
    IReadOnlyList<string> Withdrawals,
    bool IsDestroyed,
    IReadOnlyList<LocalDate> Quarantined,
    IReadOnlyList<string> Questions,
    IReadOnlyList<string> MayBe,
    IReadOnlyList<PartElsewhere> Parts
)
{
    /// <summary>What either of them knows.</summary>
    public KnownToday And(KnownToday other) =>
        new(
            [.. Same.Union(other.Same)],
            [.. Withdrawals.Union(other.Withdrawals, StringComparer.Ordinal)],
            IsDestroyed || other.IsDestroyed,
            [.. Quarantined.Union(other.Quarantined)],
            [.. Questions.Union(other.Questions, StringComparer.Ordinal)],
            [.. MayBe.Union(other.MayBe, StringComparer.Ordinal)],
            [.. Parts.Union(other.Parts)]
        );
}

/// <summary>
/// Asks the rules by which every visit is decided what they know of an item on a day: which records are about it, what of them is
/// still open, and what is fitted to it.
/// </summary>
/// <param name="touching">Gives the visits in which an item of a record, or one that can be the same, is named.</param>
/// <param name="today">The day.</param>
internal sealed class AskedToday(Func<ExaminationRecord, IReadOnlyList<KnownVisit>> touching, LocalDate today)
{
    /// <param name="row">The item, as somebody would type it today.</param>
    /// <param name="like">The record whose owner and limits it has.</param>
    public KnownToday Of(Item row, ExaminationRecord like)
    {
        var visit = new Visit
        {
            Employer = like.Visit.Employer,
            HiredFrom = like.Visit.HiredFrom,
            Regime = like.Visit.Regime,
            ExaminedOn = today,
        };
        // What it is fitted to is known from its own records; typed anew it would count as said today.
        var record = new ExaminationRecord
        {
            Visit = visit,
            Items = [row with { FittedTo = null, Status = null }],
            Limits = like.Limits,
        };
        var visits = touching(record);
        if (PlainHistory.Is(record, visits))
            return new([.. visits.Select(v => (v.Number, row.Id!))], [], IsDestroyed: false, [], [], [], []);
        var known = WhatIsKnown.Of(record, visits);
        // A row that nobody examined is withdrawn only for what other records have: where they have nothing, no rule need be asked.
        var withdrawals = known.History is { Withdrawals.Count: 0, Wholes.Count: 0 }
            ? []
            : Determine.ReasonsToWithdraw(record, known.History, today).Where(r => r.Code is not "W9").ToList();
        return new(
            [.. known.Lines.Where(l => !l.IsWhole).Select(l => (l.Visit, l.OtherId))],
            [.. withdrawals.Select(r => r.Text)],
            withdrawals.Exists(r => r.Code is "W11"),
            [.. known.History.Quarantines.Where(q => string.Equals(q.Item, row.Id, StringComparison.Ordinal)).Select(q => q.On!.Value)],
            Questions(record, known.History),
            [.. known.History.Questions.Select(q => q.OtherId)],
            known.History.Parts
        );
    }

    /// <summary>The questions in the words in which a check asks them.</summary>
    private IReadOnlyList<string> Questions(ExaminationRecord record, History history) =>
        history.Questions.Count == 0
            ? []
            : [.. Determine.Visit(record, [], history, today).Items[0].Findings.Where(f => f.Code is "IDN011").Select(f => f.Message.Text)];
}
