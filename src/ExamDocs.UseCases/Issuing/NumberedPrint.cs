using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// Documents under their numbers: the numbers are taken, the pages printed, read back and finished, and the documents published. A
/// number whose document is not made is void.
/// </summary>
/// <param name="register">Where numbers come from.</param>
/// <param name="corrections">What the visits are known by in the register, and what their documents take the place of.</param>
/// <param name="folder">Where the documents go; null where the register alone keeps them.</param>
/// <param name="today">Day of issue.</param>
/// <param name="renderer">Makes the pages.</param>
/// <param name="browser">Prints them.</param>
internal sealed class NumberedPrint(
    DocumentRegister register,
    Corrections corrections,
    string? folder,
    LocalDate today,
    DocumentRenderer renderer,
    IPagePrinter browser
) : IDisposable
{
    private readonly EmbeddedData _data = new(renderer);
    private readonly NumberedPages _pages = new(browser);

    /// <summary>Takes a number for each, all at once, and begins to print them one after the other.</summary>
    /// <returns>The same, in order, each with its number and its print.</returns>
    public async Task<IReadOnlyList<PrintInHand>> BeginAsync(IReadOnlyList<PrintInHand> prepared, CancellationToken cancellation)
    {
        var replaced = new List<IReadOnlyList<(string Number, string? Reason)>>();
        foreach (var print in prepared)
            replaced.Add(await corrections.ReplacedByAsync(print.Job));
        var pending = register.TakeAll([.. prepared.Zip(replaced, Request)]);
        var begun = new List<PrintInHand>();
        try
        {
            for (var n = 0; n < prepared.Count; n++)
            {
                var (print, job) = (prepared[n], prepared[n].Job);
                var identity = new DocumentIdentity(job.Type.Kind, pending[n].Number, today, ProgramVersion.Current)
                {
                    Replaces = replaced[n],
                    EvidenceFile = corrections.EvidenceOf(job),
                };
                var html = await job.RenderAsync(renderer, identity);
                var page = new NumberedPage(
                    job,
                    pending[n],
                    html,
                    await _data.OfAsync(job, identity, html),
                    IsChecked: print.MissingGlyphs.Count == 0
                );
                begun.Add(
                    print with
                    {
                        Pending = pending[n],
                        Printing = Task.Run(() => _pages.PrintAsync(page, cancellation), CancellationToken.None),
                    }
                );
            }
            return begun;
        }
        catch (Exception e) when (RunFailure.Is(e))
        {
            await GiveUpAsync(begun, e.Message);
            foreach (var left in pending.Skip(begun.Count))
                register.Void(left, e.Message);
            throw;
        }
    }

    /// <summary>Waits for prints and publishes those that came out whole, all at once.</summary>
    /// <returns>What came of each, in order.</returns>
    public async Task<IReadOnlyList<NumberedOutcome>> PublishAsync(IReadOnlyList<PrintInHand> begun)
    {
        var outcomes = new NumberedOutcome[begun.Count];
        var whole = new List<(int At, FinishedDocument Finished, IReadOnlyList<PrintFault> Faults)>();
        for (var n = 0; n < begun.Count; n++)
        {
            try
            {
                var printed = await begun[n].Printing!;
                if (printed.Finished is { } finished)
                    whole.Add((n, finished, printed.Faults));
                else
                    outcomes[n] = Void(begun[n], printed);
            }
            catch (Exception e) when (e is PrintException or OperationCanceledException)
            {
                register.Void(begun[n].Pending!, e.Message);
                outcomes[n] = new(null, [], Stop: e);
            }
        }
        foreach (var ((at, _, faults), (document, failure)) in whole.Zip(register.PublishAll([.. whole.Select(w => w.Finished)])))
            outcomes[at] = new(document, faults, Stop: failure);
        return outcomes;
    }

    /// <summary>Voids numbers whose documents nobody waits for any longer.</summary>
    public async Task GiveUpAsync(IReadOnlyList<PrintInHand> begun, string reason)
    {
        foreach (var print in begun)
        {
            await ((Task)print.Printing!).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            register.Void(print.Pending!, reason);
        }
    }

    public void Dispose() => _pages.Dispose();

    private DocumentRequest Request(PrintInHand print, IReadOnlyList<(string Number, string? Reason)> replaces) =>
        new(print.Job.Type.Letter, today.Year, print.Job.Type.Kind, print.Key, [.. print.Job.Items.Select(i => i.Item.Id ?? "")], folder)
        {
            Language = print.Job.Language.Tag,
            Visit = corrections.NumberOf(print.Job.Visit),
            KnownUpTo = corrections.KnownUpTo,
            CopyOf = print.Job.CopyOf?.Number,
            Replaces = [.. replaces.Select(Corrections.Noted)],
        };

    private NumberedOutcome Void(PrintInHand print, PrintedDocument printed)
    {
        var rule = printed.Failure is null ? PrintRules.PrintIsFaithful : PrintRules.BrowserPrints;
        register.Void(print.Pending!, $"{rule.Code}: {rule.Title}: it {(printed.Failure is null ? "was" : "did")} not");
        return new(null, printed.Faults, printed.Failure);
    }
}
