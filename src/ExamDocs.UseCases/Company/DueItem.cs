using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Company;

/// <summary>An item in a list of what falls due.</summary>
/// <param name="Id">Its id as the latest visit has it.</param>
/// <param name="Serial">As typed; null where not recorded.</param>
/// <param name="Category">Id of the category; null where not recorded.</param>
/// <param name="At">Whose kit it is recorded under, and where.</param>
/// <param name="NextBy">Latest date for the next thorough examination, inclusive; null where no decision gives one.</param>
/// <param name="FallsDue">
/// The day by which it has to be examined to stay in use, inclusive: earlier than <paramref name="NextBy"/> where it was found fit until a
/// day only. Null where there is none.
/// </param>
/// <param name="Standing">What the register says of it today.</param>
/// <param name="Why">Since when, until when or why, in a sentence.</param>
public sealed record DueItem(
    string Id,
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
}

/// <summary>An employer and the premises where the kit was recorded last.</summary>
/// <param name="Employer">As typed; null where not recorded.</param>
/// <param name="Premises">Their name, else their address; null where not recorded.</param>
public sealed record DuePlace(string? Employer, string? Premises)
{
    /// <summary>One text for the ways in which a firm and its premises are written.</summary>
    public string Key => $"{Core.Identity.FirmName.Fold(Employer)}\n{Core.Identity.FirmName.Fold(Premises)}";
}
