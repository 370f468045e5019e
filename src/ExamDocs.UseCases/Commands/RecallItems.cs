using ExamDocs.Core.Findings;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.UseCases.Company;
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
        var items = new ItemsOnRecord(register, today);
        var sweep = new RecallSweep(notice, items.Everything(), items.Undecided());
        return
        [
            .. sweep
                .Things.Select(t => Of(t.Thing, t.Answer))
                .Concat(
                    sweep.Undecided.Select(u => new RecalledItem(
                        u.Item.Item,
                        u.Item.Owner,
                        [],
                        u.Answer.Verdict,
                        u.Answer.Reasons,
                        null,
                        null
                    ))
                )
                .OrderByDescending(i => i.Verdict)
                .ThenBy(i => i.Owner, StringComparer.OrdinalIgnoreCase)
                .ThenBy(i => i.Item.Id, StringComparer.OrdinalIgnoreCase),
        ];
    }

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
}
