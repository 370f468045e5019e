using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.UseCases.Recalling;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Looks through a register for the kit that a maker's safety notice names.</summary>
public static class RecallItems
{
    /// <param name="place">The register.</param>
    /// <param name="notice">The notice.</param>
    /// <param name="today">The present day.</param>
    /// <returns>Every item, of every owner, whatever became of it; the affected first.</returns>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static IReadOnlyList<RecalledItem> In(string place, SafetyNotice notice, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(notice);
        using var register = DocumentRegister.OpenToRead(place, today);
        var items = new ItemsOnRecord(register, today) { WithoutObservations = true };
        var sweep = new RecallSweep(notice, items.Everything(), items.Undecided());
        return
        [
            .. sweep
                .Things.Select((t, at) => Of(t.Thing, t.Answer) with { Alone = t.Alone, Place = at, Parts = t.Parts })
                .Concat(Once(sweep.Undecided).Select(u => Of(u.Item, u.Answer)))
                .OrderByDescending(i => i.Verdict)
                .ThenBy(i => i.Owner, StringComparer.OrdinalIgnoreCase)
                .ThenBy(i => i.Item.Id, StringComparer.OrdinalIgnoreCase),
        ];
    }

    /// <summary>
    /// An id that several records of one employer name, and of which they say the same, is one item; the latest says where it is. Rows
    /// without an id stay apart: nothing says whether they are one.
    /// </summary>
    private static IEnumerable<(UndecidedItem Item, RecallAnswer Answer)> Once(
        IEnumerable<(UndecidedItem Item, RecallAnswer Answer)> undecided
    ) =>
        undecided
            .Index()
            .GroupBy(u =>
                u.Item.Item is { Item: { Id: not null } row, Record.Visit.Employer: var employer, Owner: var owner }
                    ? (0, FirmName.Fold(employer?.Name), SweepPlan.RowKey(row, owner))
                    : (u.Index + 1, "", "")
            )
            .Select(same => same.Last().Item);

    private static RecalledItem Of(SweptThing swept, RecallAnswer answer) =>
        new(
            swept.Shown.Item,
            swept.Shown.Owner,
            [
                .. swept
                    .Thing.Entries.Select(e => e.Item.Id)
                    .OfType<string>()
                    .Where(id => !string.Equals(id, swept.Shown.Id, StringComparison.Ordinal))
                    .Distinct(StringComparer.Ordinal),
            ],
            answer.Verdict,
            answer.Reasons,
            swept.Shown.Standing,
            swept.Shown.Why
        )
        {
            LatestVisit = swept.Thing.Rows[0].Record.Visit,
            Limits = LimitsOf(swept.Shown.Item, swept.Thing.Rows[0].Record),
            History = swept.Shown.History,
            IsWithdrawn = swept.Thing.Known.Withdrawals.Count > 0,
        };

    private static RecalledItem Of(UndecidedItem undecided, RecallAnswer answer) =>
        new(undecided.Item, undecided.Owner, [], answer.Verdict, answer.Reasons, null, null)
        {
            LatestVisit = undecided.Record.Visit,
            Limits = LimitsOf(undecided.Item, undecided.Record),
        };

    private static IReadOnlyList<MakersLimits> LimitsOf(Item item, ExaminationRecord record) =>
        [.. record.Limits.Where(l => ThingOnRecord.IsOneMaker(l.Maker, item.Maker) && Folded.Same(l.Model, item.Model))];
}
