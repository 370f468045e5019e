using NodaTime;

namespace ExamDocs.Core.Calendar;

/// <summary>What is known of an item that an employer is about to put into service for the first time.</summary>
/// <param name="EntersServiceOn">Day on which this employer first puts it into service.</param>
/// <param name="UsedBefore">Whether it was used before, by anybody; null where that is not known.</param>
/// <param name="DeclarationOn">Date of the declaration of conformity the employer holds; null where none is held.</param>
/// <param name="DeclarationCouldExist">False only for equipment for which no declaration could or should be drawn up.</param>
/// <param name="FromOtherUndertaking">It was obtained from the undertaking of another person.</param>
/// <param name="TransferEvidence">
/// It came with physical evidence that the last thorough examination the law asks for was made.
/// </param>
public sealed record EntryIntoService(
    LocalDate EntersServiceOn,
    bool? UsedBefore,
    LocalDate? DeclarationOn,
    bool DeclarationCouldExist = true,
    bool FromOtherUndertaking = false,
    bool TransferEvidence = false
);

/// <summary>
/// Whether lifting equipment has to be thoroughly examined before its first service with an employer: reg 9(1).
/// Source: SR 1999/304 reg 9(1), the Northern Ireland twin; SI 1998/2307 reg 9(1) and 9(4) from memory.
/// </summary>
public static class FirstService
{
    /// <summary>Greatest age of the declaration on entering service, in months, inclusive.</summary>
    public const int DeclarationMonths = 12;

    /// <summary>
    /// True where an examination has to come first. Whatever is not known counts against the item. Two kinds of item need none: an
    /// unused one whose declaration is not more than twelve months old, or for which none could exist; and one from another
    /// undertaking that came with the evidence.
    /// </summary>
    public static bool NeedsExamination(EntryIntoService entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var isNew = entry.UsedBefore is false && (IsDeclaredInTime(entry) || !entry.DeclarationCouldExist);
        var isVouchedFor = entry.FromOtherUndertaking && entry.TransferEvidence;
        return !isNew && !isVouchedFor;
    }

    private static bool IsDeclaredInTime(EntryIntoService entry) =>
        entry.DeclarationOn is { } on
        && on <= entry.EntersServiceOn
        && entry.EntersServiceOn <= CorrespondingDate.AddMonths(on, DeclarationMonths);
}
