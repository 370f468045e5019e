using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Finds out what is to be done about jobs before they are printed; no number is taken yet.</summary>
/// <param name="register">Where documents are.</param>
/// <param name="corrections">What the visits are known by in the register.</param>
/// <param name="renderer">Makes the pages.</param>
/// <param name="heldBack">Takes what cannot be printed as it was typed.</param>
/// <param name="browser">Prints what may lack a letter; started when it is first asked for.</param>
internal sealed class PrintLookup(
    DocumentRegister register,
    Corrections corrections,
    DocumentRenderer renderer,
    HeldBack heldBack,
    Func<Task<IPagePrinter>> browser
)
{
    /// <param name="job">The job.</param>
    /// <param name="beside">Those that are in hand.</param>
    /// <param name="cancellation">Stops it.</param>
    public async Task<PrintInHand> OfAsync(DocumentJob job, IEnumerable<PrintInHand> beside, CancellationToken cancellation)
    {
        var draft = await job.DraftAsync(renderer);
        var print = new PrintInHand(job, job.Key(draft));
        if (beside.Any(p => string.Equals(p.Key, print.Key, StringComparison.Ordinal)))
            return print with { State = PrintState.SaidByAnother };
        if ((register.FindIssued(print.Key) ?? await corrections.StandingAsync(job)) is { } before)
            return print with { State = PrintState.Issued, Before = before };
        if (heldBack.HoldsReportOf(job) || (heldBack.Fits(job) is false && !job.IsWarning))
            return print with { State = PrintState.HeldBack };
        // No number is taken before there is something to print with.
        var glyphs = await GlyphFaultsAsync(draft, await browser(), cancellation);
        if (glyphs.Count > 0 && !job.IsWarning)
            return print with { State = PrintState.LacksGlyphs, MissingGlyphs = glyphs };
        // A warning that lacks a letter is printed, and the letter is named once.
        if (glyphs.Count > 0)
            heldBack.Tell(job, PrintRules.GlyphIsMissing, glyphs);
        return print with { MissingGlyphs = glyphs };
    }

    private static async Task<IReadOnlyList<PrintFault>> GlyphFaultsAsync(
        string draft,
        IPagePrinter browser,
        CancellationToken cancellation
    ) =>
        MissingGlyphs.MayOccurIn(draft)
            ? FaithfulPrint.Lacking(draft, MissingGlyphs.In(draft, await browser.PrintAsync(draft, cancellation)))
            : [];
}
