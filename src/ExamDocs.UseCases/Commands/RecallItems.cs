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
        var items = new ItemsOnRecord(register, today);
        var answers = items.Everything().Select(t => (Swept: t, Answer: RecallCheck.Of(notice, Rows(t.Thing)))).ToList();
        var alone = answers.ConvertAll(a => a.Answer.Verdict);
        for (var changed = true; changed; )
        {
            changed = false;
            foreach (var (n, (swept, answer)) in answers.Index().ToList())
            {
                var worse = Worse(swept, answer, answers);
                changed |= worse != answer;
                answers[n] = (swept, worse);
            }
        }
        return
        [
            .. answers
                .Zip(alone, (a, verdict) => Of(a.Swept, a.Answer) with { Alone = verdict })
                .Concat(items.Undecided().Select(u => Of(u.Item, u.Record, notice)))
                .OrderByDescending(i => i.Verdict)
                .ThenBy(i => i.Owner, StringComparer.OrdinalIgnoreCase)
                .ThenBy(i => i.Item.Id, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static IReadOnlyList<Item> Rows(ThingOnRecord thing) => [.. thing.Entries.Select(e => e.Item)];

    /// <summary>No better than what is fitted to it, and open where it may be another that is named.</summary>
    private static RecallAnswer Worse(SweptThing swept, RecallAnswer answer, IReadOnlyList<(SweptThing Swept, RecallAnswer Answer)> all)
    {
        foreach (var part in swept.Thing.Known.Parts)
        {
            var worst = all.Where(a => IsPart(a.Swept.Thing, part.Id, swept.Thing)).Select(a => a.Answer.Verdict).DefaultIfEmpty().Max();
            if (worst > answer.Verdict)
                answer = new(
                    worst,
                    [
                        worst is RecallVerdict.Affected
                            ? (Message)$"{part.Id}, which is fitted to it, is affected"
                            : $"{part.Id}, which is fitted to it, may be affected",
                    ]
                );
        }
        var alike = all.FirstOrDefault(a => a.Answer.Verdict > RecallVerdict.NotAffected && swept.Alike.Contains(a.Swept.Thing));
        return answer.Verdict is RecallVerdict.NotAffected && alike.Swept is { } other
            ? new(RecallVerdict.CannotTell, [$"it may be the same item as {other.Shown.Id}, which is affected or may be"])
            : answer;
    }

    private static bool IsPart(ThingOnRecord thing, string? id, ThingOnRecord whole) =>
        thing != whole && thing.Entries.Any(e => Folded.Same(e.Item.Id, id)) && FirmName.MayBeSame(thing.Owner, whole.Owner);

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

    private static RecalledItem Of(Item item, ExaminationRecord record, SafetyNotice notice)
    {
        var answer = RecallCheck.Of(notice, [item]);
        return new(item, record.Visit.HiredFrom?.Name ?? record.Visit.Employer?.Name, [], answer.Verdict, answer.Reasons, null, null)
        {
            LatestVisit = record.Visit,
            Limits = LimitsOf(item, record),
        };
    }

    private static IReadOnlyList<MakersLimits> LimitsOf(Item item, ExaminationRecord record) =>
        [.. record.Limits.Where(l => ThingOnRecord.IsOneMaker(l.Maker, item.Maker) && Folded.Same(l.Model, item.Model))];
}
