using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Says what a register knows of one item today. It decides nothing anew: it takes the latest decision, what ended since, and what is
/// issued, and shows the worst of them.
/// </summary>
internal sealed class StandingToday
{
    private readonly DocumentsOnRecord _documents;
    private readonly LocalDate _today;

    /// <param name="documents">The documents of the register.</param>
    /// <param name="thing">The item.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public StandingToday(DocumentsOnRecord documents, ThingOnRecord thing, LocalDate today) =>
        (_documents, Thing, _today) = (documents, thing, today);

    public ThingOnRecord Thing { get; }

    /// <summary>By itself, without what is fitted to it and what it may be. Worked out only where it is asked for.</summary>
    public FoundItem Alone => field ??= Decided();

    /// <summary>The item with what is fitted to it and what it may be under another tag: it stands no better than any of these.</summary>
    public FoundItem With(IReadOnlyList<FoundItem> parts, IEnumerable<FoundItem> others)
    {
        var worst = Thing
            .Known.Parts.Select(p => Stands.Of(p, _today))
            .OfType<Stands>()
            // What is withdrawn and fitted to it is among the parts known; another thing that was withdrawn may have had the part's id.
            .Concat(
                parts
                    .Where(p => p.Standing is Standing.Held or Standing.Overdue)
                    .Select(p => new Stands(p.Standing, $"{p.Id}, which is fitted to it: {p.Why}", p.IsByDate))
            )
            .Concat(
                others
                    .Where(o => o.Standing is Standing.Withdrawn or Standing.Held)
                    .Select(o => new Stands(Standing.Held, $"{o.Id} has the same serial number: {o.Why}", o.IsByDate))
            )
            .OrderBy(w => w.Standing)
            .ThenBy(w => w.IsByDate)
            .FirstOrDefault();
        return
            worst is null || worst.Standing > Alone.Standing || (worst.Standing == Alone.Standing && !(Alone.IsByDate && !worst.IsByDate))
            ? Alone
            : Alone with
            {
                Standing = worst.Standing,
                Why = worst.Why,
                IsByDate = worst.IsByDate,
                UsableThrough = null,
            };
    }

    private FoundItem Decided()
    {
        var (counting, history) = (Thing.Counting.ToList(), Thing.Entries.ToDictionary(e => e, Visit));
        var at = Math.Max(0, counting.FindIndex(e => e.Outcome.Codes is not ["U0"]));
        var (standing, why, isByDate) = Of(counting[at], counting[..at], history[counting[at]]);
        return new FoundItem
        {
            Id = Thing.Rows[0].Item.Id!,
            Owner = Thing.Owner,
            Employer = Thing.Rows[0].Record.Visit.Employer?.Name,
            Premises = Thing.Rows[0].Premises,
            Item = Thing.Rows[0].Item,
            Standing = standing,
            Why = why,
            IsByDate = isByDate,
            UsableThrough = standing is Standing.InService ? Through(counting[at].Outcome).Day : null,
            NextBy = counting[at].Outcome.NextBy,
            FallsDue = counting[at].Outcome is { NextBy: not null } outcome ? Through(outcome).Day : counting[at].Outcome.FallsDue,
            History = [.. Thing.Entries.Select(e => history[e])],
        };
    }

    /// <param name="decided">The latest decision.</param>
    /// <param name="since">What was recorded since, without an examination.</param>
    /// <param name="visit">The visit of the decision.</param>
    private Stands Of(ItemEntry decided, IReadOnlyList<ItemEntry> since, FoundVisit visit)
    {
        var outcome = decided.Outcome;
        if (decided.IsOf(Outcome.Withdraw))
            return Thing.Known.Withdrawals.Count > 0
                ? new(Standing.Withdrawn, $"withdrawn{On(decided)}: {OutcomeRules.InWords(outcome.Codes)}")
                : new(Standing.Held, $"withdrawn{On(decided)}, released since, and not examined again");
        if (Thing.Known.Withdrawals.Count > 0)
            return new(
                Thing.Known.IsDestroyed ? Standing.Withdrawn : Standing.Held,
                Message.AsIs(string.Join("; ", Thing.Known.Withdrawals))
            );
        if (since.FirstOrDefault(e => e.Item.Status is ItemStatus.Lost or ItemStatus.Destroyed) is { } gone)
            return new(
                Standing.Withdrawn,
                gone.Item.Status is ItemStatus.Lost ? (Message)$"recorded as lost{On(gone)}" : $"recorded as destroyed{On(gone)}"
            );
        if (!decided.IsOf(Outcome.Fit) && !decided.IsOf(Outcome.FitUntil))
            return new(Standing.Held, $"not determined{On(decided)}: {OutcomeRules.InWords(outcome.Codes)}");
        if (_documents.EndsOf(decided.Visit.Visit).FirstOrDefault(e => IsItem(e.Item, decided)) is { } end)
            return new(Standing.Withdrawn, $"{end.Why}, since {end.On}");
        if (Thing.Known.Questions.Count > 0)
            return new(Standing.Held, Message.AsIs(string.Join("; ", Thing.Known.Questions)));
        if (Thing.Known.Quarantined.Count > 0)
            return new(Standing.Held, $"put in quarantine{On(Thing.Known.Quarantined.Max())}");
        if (SentForRepair(decided, since) is { } sent)
            return new(Standing.Held, $"sent for repair{On(sent)}");
        if (outcome.Until < _today)
            return new(Standing.Withdrawn, $"not to be used after {outcome.Until.Value}", IsByDate: true);
        if (outcome.NextBy is not { } next)
            return new(Standing.Held, $"no next examination is recorded{On(decided)}", IsByDate: true);
        if (next < _today)
            return new(Standing.Overdue, $"the next examination was due by {next}", IsByDate: true);
        if (!visit.Documents.Any(d => d is { IsCurrent: true, Kind: "report" }))
            return new(Standing.NotIssued, $"found {Word(outcome)}{On(decided)}, and no current report says so");
        var (through, because) = Through(outcome);
        return new(Standing.InService, $"{Word(outcome)}{On(decided)}, until {through}{because}");
    }

    /// <summary>The day on which it was sent for repair, after its latest examination; null where it was not.</summary>
    private LocalDate? SentForRepair(ItemEntry decided, IReadOnlyList<ItemEntry> since) =>
        Thing
            .Counting.SelectMany(e =>
                e.Record.Disposals.Where(d => IsItem(d.Item, e) && d.Action is DisposalAction.SentForRepair)
                    .Where(d => d.On > decided.Day || since.Contains(e))
                    .Select(d => d.On ?? e.Day)
            )
            .Cast<LocalDate?>()
            .Max();

    /// <summary>
    /// The last day of use, and which part makes it so. Asked only where there is a next examination.
    /// </summary>
    private (LocalDate Day, Message Because) Through(RememberedOutcome outcome) =>
        Thing
            .Known.Parts.SelectMany(p =>
                new[] { p.Until, p.NextBy }.Select(day => (Day: day, Because: (Message)$" (by {p.Id}, which is fitted to it)"))
            )
            .Prepend((Day: outcome.Until, Because: Message.None))
            .Prepend((Day: outcome.NextBy, Because: Message.None))
            .Where(d => d.Day is not null)
            .Select(d => (d.Day!.Value, d.Because))
            .MinBy(d => d.Value);

    private FoundVisit Visit(ItemEntry entry) =>
        new(
            entry.Visit.Visit,
            entry.Visit.Reference,
            entry.Visit.Employer,
            entry.Outcome.ExaminedOn ?? entry.Visit.ExaminedOn,
            entry.Outcome.Outcome,
            entry.Outcome.Codes,
            entry.Outcome.Until,
            entry.Outcome.NextBy,
            [
                .. _documents
                    .About(entry.Item.Id!, entry.Visit.Visit)
                    .Where(d => d.State is DocumentState.Issued)
                    .Select(d => Document(d, entry)),
            ]
        )
        {
            Premises = entry.Premises,
            FallsDue = entry.Outcome.FallsDue,
        };

    private static FoundDocument Document(DocumentStatus document, ItemEntry entry)
    {
        var line = document.EndedLines.FirstOrDefault(l => IsItem(l.Item, entry));
        return new(
            document.Number,
            document.Kind,
            document.IsCurrent && line is null,
            document.Ended is { } end
                ? end is DocumentEnd.Replaced
                    ? $"replaced by {string.Join(", ", document.ReplacedBy)}"
                    : EndedWords.Of(document)
                : line is not null
                    ? EndedWords.Of(line)
                    : null
        );
    }

    private static bool IsItem(string? item, ItemEntry entry) => string.Equals(item, entry.Item.Id, StringComparison.Ordinal);

    private static Message On(ItemEntry entry) => On(entry.Day);

    private static Message On(LocalDate day) => day == LocalDate.MinIsoValue ? $" on a day not recorded" : (Message)$" on {day}";

    /// <summary>A word that nobody knows stays as it was stored.</summary>
    private static Message Word(RememberedOutcome outcome) => OutcomeWords.Find(outcome.Outcome)?.Said() ?? Message.AsIs(outcome.Outcome);
}
