using ExamDocs.Core.Findings;
using ExamDocs.Documents.Comparing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Do the pages show everything that follows from the embedded data, in its place, and nothing more?</summary>
internal static class PrintQuestion
{
    private const string Question = "print";

    private const int Quoted = 3;

    /// <summary>Looks for what no version of the program puts into a file; asked before anything else about the pages.</summary>
    /// <returns>Null where nothing of that kind was found.</returns>
    public static Statement? Foreign(byte[] pdf)
    {
        try
        {
            return KnownStructure.Faults(pdf) is { Count: > 0 } faults
                ? Statement.Fails(
                    Question,
                    $"it shows or holds what no document of this program does: {string.Join("; ", faults.Take(Quoted))}"
                )
                : null;
        }
        catch (Exception e) when (DocumentContents.IsOfTheFile(e))
        {
            return Statement.Fails(Question, $"its pages cannot be read");
        }
    }

    /// <param name="pdf">The whole file.</param>
    /// <param name="contents">The data embedded in it.</param>
    /// <param name="jobs">The jobs that it may come from, at least one.</param>
    /// <param name="reprint">Makes the pages once more.</param>
    public static async Task<Statement> AskAsync(
        byte[] pdf,
        DocumentContents contents,
        IReadOnlyList<DocumentJob> jobs,
        Reprint reprint,
        CancellationToken cancellation
    )
    {
        if (contents.Basis.Version is var version && !string.Equals(version, ProgramVersion.Current, StringComparison.Ordinal))
            return Statement.NotChecked(
                Question,
                $"it was printed by version {version}, whose wording version {ProgramVersion.Current} does not know: its text "
                    + $"could not be compared"
            );
        try
        {
            var pictures = DrawnPictures.Of(pdf);
            IReadOnlyList<string>? fewest = null;
            foreach (var job in jobs)
            {
                var html = await RecomposedDocument.HtmlAsync(job, contents.Basis, reprint.Renderer, pictures);
                var found = FaithfulPrint.Differences(html, pdf);
                if (found.Count == 0)
                    return Compared(pdf, await reprint.PrintAsync(html, contents, pdf, cancellation));
                fewest = fewest is null || found.Count < fewest.Count ? found : fewest;
            }
            return Fails(fewest!);
        }
        catch (Exception e) when (DocumentContents.IsOfTheFile(e))
        {
            return Fails(["it has no pages that can be read"]);
        }
    }

    private static Statement Compared(byte[] pdf, byte[]? remade)
    {
        if (remade is null)
            return Statement.NotChecked(
                Question,
                $"its words are those that follow from the data within; where they stand was not compared, since there is no "
                    + $"browser here to print it with once more"
            );
        var found = SameFile.Differences(pdf, remade);
        if (found.Count == 0)
            return Statement.Holds(
                Question,
                $"printed once more from the data within, it is the same in every mark of every page; what photos show is not compared"
            );
        var drawn = SameDrawing.Differences(pdf, remade);
        // Another browser or other fonts lay out the same page a little differently.
        var isOfAnotherComputer = !SameFile.AreOfOneKindOfComputer(pdf, remade);
        return (drawn.Count, isOfAnotherComputer) switch
        {
            (> 0, false) => Fails(drawn),
            (0, false) => Fails([.. found.Select(d => d.Words)]),
            (_, true) when !SameDrawing.KeepRows(pdf, remade) => Fails(["words of one row stand in different rows"]),
            (0, true) => Statement.NotChecked(
                Question,
                $"its words are those that follow from the data within, each in its place; how the letters look was not "
                    + $"compared, since it was printed with another browser or other fonts than are here"
            ),
            _ => Statement.NotChecked(
                Question,
                $"its words are those that follow from the data within; where they stand and how they look was not compared, "
                    + $"since it was printed with another browser or other fonts than are here"
            ),
        };
    }

    private static Message More => $"; and more";

    private static Statement Fails(IReadOnlyList<string> found) =>
        Statement.Fails(
            Question,
            $"the pages do not show what follows from the data within: "
                + $"{string.Join("; ", found.Take(Quoted))}{(found.Count > Quoted ? More : Message.None)}"
        );
}
