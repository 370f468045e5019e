using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// One document under its number: the number is taken, the page printed, read back and finished, and the document published. A
/// number whose document is not made is void.
/// </summary>
/// <param name="register">Where numbers come from.</param>
/// <param name="corrections">What the visits are known by in the register, and what their documents take the place of.</param>
/// <param name="folder">Where the documents go; null where the register alone keeps them.</param>
/// <param name="today">Day of issue.</param>
/// <param name="renderer">Makes the pages.</param>
/// <param name="heldBack">Takes what cannot be printed as it was typed.</param>
internal sealed class NumberedPrint(
    DocumentRegister register,
    Corrections corrections,
    string? folder,
    LocalDate today,
    DocumentRenderer renderer,
    HeldBack heldBack
)
{
    private readonly EmbeddedData _data = new();

    /// <returns>No document, and why, where it is held back because the print is not faithful; its number is void then.</returns>
    public async Task<(IssuedDocument? Document, IReadOnlyList<PrintFault> Faults)> PrintAsync(
        DocumentJob job,
        string key,
        Browser browser,
        bool isChecked,
        CancellationToken cancellation
    )
    {
        var ids = job.Items.Select(i => i.Item.Id ?? "").ToList();
        var replaces = await corrections.ReplacedByAsync(job);
        var pending = register.Take(
            new DocumentRequest(job.Type.Letter, today.Year, job.Type.Kind, key, ids, folder)
            {
                Language = job.Language.Tag,
                Visit = corrections.NumberOf(job.Visit),
                CopyOf = job.CopyOf?.Number,
                Replaces = [.. replaces.Select(Corrections.Noted)],
            }
        );
        try
        {
            var identity = new DocumentIdentity(job.Type.Kind, pending.Number, today, ProgramVersion.Current)
            {
                Replaces = replaces,
                EvidenceFile = corrections.EvidenceOf(job),
            };
            var html = await job.RenderAsync(renderer, identity);
            var printed = await browser.PrintAsync(html, cancellation);
            var faults = isChecked ? FaithfulPrint.Faults(html, printed) : [];
            if (faults.Count > 0 && !job.IsWarning)
            {
                register.Void(pending, $"{PrintRules.PrintIsFaithful.Code}: {PrintRules.PrintIsFaithful.Title}: it was not");
                return (null, faults);
            }
            if (faults.Count > 0)
                heldBack.Tell(job, PrintRules.PrintIsFaithful, faults);
            var pdf = await FinishAsync(job, identity, printed, cancellation);
            return (register.Publish(pending, pdf, PdfPages.Count(pdf), Outcomes(job.Items)), []);
        }
        catch (Exception e) when (e is PrintException or OperationCanceledException)
        {
            register.Void(pending, e.Message);
            throw;
        }
    }

    private async Task<byte[]> FinishAsync(DocumentJob job, DocumentIdentity identity, byte[] printed, CancellationToken cancellation)
    {
        if (job.Signer is not { } signer)
            return Finisher.Finish(printed, _data.Of(job, identity));
        if (job.SignedBy is { } person && !string.Equals(person.Trim(), signer.Key.Name, StringComparison.OrdinalIgnoreCase))
            heldBack.Remark($"{person} is to sign by the record, and the key is of {signer.Key.Name}: both names are printed");
        return await Finisher.FinishSignedAsync(
            printed,
            _data.Of(job, identity),
            signer,
            CommonPhrases.Languages.In(job.Language).SignatureField,
            cancellation
        );
    }

    private static string Outcomes(IReadOnlyList<DeterminedItem> items) =>
        JsonSerializer.Serialize(
            items
                .GroupBy(i => i.Item.Id ?? "", StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => g.Max(i => i.Outcome).Word(), StringComparer.Ordinal)
        );
}
