using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Issuing;

/// <summary>What is to be done about a job.</summary>
internal enum PrintState
{
    /// <summary>It is to be printed under a number of its own.</summary>
    ToPrint,

    /// <summary>What says the same is issued already; it is only put in place.</summary>
    Issued,

    /// <summary>Another that is in hand says the same: it is looked for again once that one is out.</summary>
    SaidByAnother,

    /// <summary>It is held back, and that was said.</summary>
    HeldBack,

    /// <summary>No installed font has all of its letters.</summary>
    LacksGlyphs,
}

/// <summary>A job that a run has begun with: what was found before it is printed, and then its print.</summary>
/// <param name="Job">The job.</param>
/// <param name="Key">Names it by what it says.</param>
/// <param name="State">What is to be done.</param>
internal sealed record PrintInHand(DocumentJob Job, string Key, PrintState State = PrintState.ToPrint)
{
    /// <summary>What is issued already.</summary>
    public IssuedDocument? Before { get; init; }

    /// <summary>The letters that no installed font has, each with its text; empty where all can be printed.</summary>
    public IReadOnlyList<PrintFault> MissingGlyphs { get; init; } = [];

    /// <summary>The number taken, where it is being printed.</summary>
    public PendingDocument? Pending { get; init; }

    /// <summary>Its print, which goes on while others are begun.</summary>
    public Task<PrintedDocument>? Printing { get; init; }
}

/// <summary>What came of a print.</summary>
/// <param name="Finished">The finished file; null where there is none.</param>
/// <param name="Faults">What is not printed as it should be.</param>
/// <param name="Failure">Why a browser that prints other pages does not print this one; null where it does.</param>
internal sealed record PrintedDocument(FinishedDocument? Finished, IReadOnlyList<PrintFault> Faults, PrintException? Failure = null);

/// <summary>What came of a document.</summary>
/// <param name="Document">It is issued; null where its number is void.</param>
/// <param name="Faults">What is not printed as it should be.</param>
/// <param name="Failure">Why it alone cannot be printed.</param>
/// <param name="Stop">Why the run cannot go on after it; null where it can.</param>
internal sealed record NumberedOutcome(
    IssuedDocument? Document,
    IReadOnlyList<PrintFault> Faults,
    PrintException? Failure = null,
    Exception? Stop = null
);
