using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Company;

/// <summary>An item in a list of what falls due.</summary>
/// <param name="Id">Its id as the latest visit has it; null where it was recorded without one.</param>
/// <param name="Serial">As typed; null where not recorded.</param>
/// <param name="Category">Id of the category; null where not recorded.</param>
/// <param name="At">Whose kit it is recorded under, and where.</param>
/// <param name="NextBy">Latest date for the next thorough examination, inclusive; null where no decision gives one.</param>
/// <param name="FallsDue">
/// The day by which it has to be examined to stay in use, inclusive: earlier than <paramref name="NextBy"/> where it, or what is fitted to
/// it, was found fit until a day only. Null where there is none.
/// </param>
/// <param name="Standing">What the register says of it today.</param>
/// <param name="Why">Since when, until when or why, in a sentence.</param>
public sealed record DueItem(
    string? Id,
    string? Serial,
    string? Category,
    DuePlace At,
    LocalDate? NextBy,
    LocalDate? FallsDue,
    Standing Standing,
    Message Why
)
{
    internal static DueItem Of(FoundItem found) =>
        new(
            found.Id,
            found.Item.Serial,
            found.Item.Category,
            new DuePlace(found.Employer, found.Premises),
            found.NextBy,
            found.FallsDue,
            found.Standing,
            found.Why
        );

    /// <summary>A row without an id: no visit can decide about it.</summary>
    internal static DueItem Of(UndecidedItem row) =>
        new(
            row.Item.Id,
            row.Item.Serial,
            row.Item.Category,
            new DuePlace(row.Record.Visit.Employer?.Name, ItemEntry.PremisesOf(row.Record)),
            null,
            null,
            Standing.Held,
            $"the item has no id"
        );
}

/// <summary>An employer and the premises where the kit was recorded last.</summary>
/// <param name="Employer">As typed; null where not recorded.</param>
/// <param name="Premises">Their name, else their address; null where not recorded.</param>
public sealed record DuePlace(string? Employer, string? Premises)
{
    /// <summary>One text for the ways in which a firm and its premises are written. Words of premises stay apart: 1 1 is not 11.</summary>
    public string Key => $"{FirmName.Fold(Employer)}\n{string.Join(' ', FirmName.AllWords(Premises))}";
}
