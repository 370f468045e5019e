using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>An item of the register and what a safety notice says of it.</summary>
/// <param name="Item">As recorded last.</param>
/// <param name="Owner">Whose it is as the latest visit names it; null where not recorded.</param>
/// <param name="OtherIds">Ids that it had in other records.</param>
/// <param name="Verdict">Affected, not affected, or not to be told.</param>
/// <param name="Reasons">Why.</param>
/// <param name="Standing">How it stands today; null where no visit decided about it.</param>
/// <param name="Why">Why it stands so, in a sentence; null where no visit decided about it.</param>
public sealed record RecalledItem(
    Item Item,
    string? Owner,
    IReadOnlyList<string> OtherIds,
    RecallVerdict Verdict,
    IReadOnlyList<Message> Reasons,
    Standing? Standing,
    Message? Why
);

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
        var all = items.Everything();
        var (answers, index) = (all.Select(t => (Swept: t, Answer: RecallCheck.Of(notice, Rows(t.Thing)))).ToList(), new SweptIndex(all));
        for (var changed = true; changed; )
        {
            changed = false;
            foreach (var (n, (swept, answer)) in answers.Index().ToList())
            {
                var worse = Worse(swept, answer, answers, index);
                changed |= worse != answer;
                answers[n] = (swept, worse);
            }
        }
        return
        [
            .. answers
                .Select(a => Of(a.Swept, a.Answer))
                .Concat(items.Undecided().Select(u => Of(u.Item, u.Record, notice)))
                .OrderByDescending(i => i.Verdict)
                .ThenBy(i => i.Owner, StringComparer.OrdinalIgnoreCase)
                .ThenBy(i => i.Item.Id, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static IReadOnlyList<Item> Rows(ThingOnRecord thing) => [.. thing.Entries.Select(e => e.Item)];

    /// <summary>No better than what is fitted to it, and open where it may be another that is named.</summary>
    private static RecallAnswer Worse(
        SweptThing swept,
        RecallAnswer answer,
        IReadOnlyList<(SweptThing Swept, RecallAnswer Answer)> all,
        SweptIndex index
    )
    {
        foreach (var part in swept.Thing.Known.Parts)
        {
            var worst = index
                .WithId(part.Id)
                .Where(at => IsPart(all[at].Swept.Thing, swept.Thing))
                .Select(at => all[at].Answer.Verdict)
                .DefaultIfEmpty()
                .Max();
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
        var alike = index.Of(swept.Alike).Select(at => all[at]).FirstOrDefault(a => a.Answer.Verdict > RecallVerdict.NotAffected);
        return answer.Verdict is RecallVerdict.NotAffected && alike.Swept is { } other
            ? new(RecallVerdict.CannotTell, [$"it may be the same item as {other.Shown.Id}, which is affected or may be"])
            : answer;
    }

    private static bool IsPart(ThingOnRecord thing, ThingOnRecord whole) => thing != whole && FirmName.MayBeSame(thing.Owner, whole.Owner);

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
        );

    private static RecalledItem Of(Item item, ExaminationRecord record, SafetyNotice notice)
    {
        var answer = RecallCheck.Of(notice, [item]);
        return new(item, record.Visit.HiredFrom?.Name ?? record.Visit.Employer?.Name, [], answer.Verdict, answer.Reasons, null, null);
    }
}
