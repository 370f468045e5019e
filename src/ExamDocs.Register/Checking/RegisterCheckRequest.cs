using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Checking;

/// <summary>What a register is compared with.</summary>
public sealed record RegisterCheckRequest
{
    /// <summary>Checkpoints that were kept elsewhere.</summary>
    public IReadOnlyList<Checkpoint> Kept { get; init; } = [];

    /// <summary>
    /// The log as it was when a check found all of it, and all that it is about, sound. What was entered before is then not looked at
    /// again, only that the log still begins so. Null to look at everything.
    /// </summary>
    public Checkpoint? Since { get; init; }

    /// <summary>Reads a stored record, null where that is impossible; left out, no rows are compared with their record.</summary>
    public Func<byte[], ExaminationRecord?>? Read { get; init; }

    /// <summary>
    /// Decides a remembered visit again from its record, with what it could see, as of its day; null where that is impossible.
    /// Left out, nothing is decided again.
    /// </summary>
    public Func<RememberedVisit, byte[], OutcomesAgain?>? Decide { get; init; }

    /// <summary>Version of the program that decides again: a different outcome of another version is not a fault of the register.</summary>
    public string? Version { get; init; }
}

/// <summary>What deciding a visit again came to.</summary>
/// <param name="Outcomes">In the order in which they are stored.</param>
public sealed record OutcomesAgain(IReadOnlyList<RememberedOutcome> Outcomes)
{
    /// <summary>Why another outcome than the stored one may be as it should, in a sentence; null where it may not.</summary>
    public string? Caveat { get; init; }
}

/// <summary>What a check of a register found.</summary>
/// <param name="Faults">One sentence for each thing that is wrong.</param>
/// <param name="Notes">One sentence for each thing that somebody should know and that may be as it should.</param>
public sealed record RegisterCheckResult(IReadOnlyList<string> Faults, IReadOnlyList<string> Notes)
{
    /// <summary>
    /// The log that was gone through; null where there is none. Where nothing is wrong, all that it is about was found sound.
    /// </summary>
    public Checkpoint? Log { get; init; }

    /// <summary>Visits that another version of the program had decided.</summary>
    public int DecidedByOthers { get; init; }

    /// <summary>How many of these come out differently now.</summary>
    public int DecidedOtherwise { get; init; }

    /// <summary>Of the faults and notes, those about what a visit decided, with the number of the visit.</summary>
    public IReadOnlyList<(int Visit, string Words)> OfVisits { get; init; } = [];

    /// <summary>Of the faults, those about a document, with its number.</summary>
    public IReadOnlyList<(string Number, string Words)> OfDocuments { get; init; } = [];
}
