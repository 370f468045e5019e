using System.Text;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Tables;
using ExamDocs.Register;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Templates.AuditPack.Wording;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime.Text;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>Writes the ZIP of a pack: every document as issued, the evidence as it came, and what lists and explains them.</summary>
/// <param name="pack">What goes into it.</param>
/// <param name="asked">What it is asked to show.</param>
/// <param name="register">Where the documents are.</param>
/// <param name="index">The page that a browser opens.</param>
internal sealed class PackBag(GatheredPack pack, PackQuestion asked, DocumentRegister register, string index)
{
    /// <param name="to">Where the ZIP goes.</param>
    /// <param name="file">Its name, of which the folder within it has its own.</param>
    /// <param name="done">Called after each document.</param>
    /// <param name="cancellation">Stops between two files.</param>
    public void Write(Stream to, string file, Action done, CancellationToken cancellation)
    {
        var folder = SafeFileName.Cut(SafeFileName.Part(Path.GetFileNameWithoutExtension(file)), 80, 100);
        using var bag = new BagWriter(to, folder.Length == 0 ? "pack" : folder);
        foreach (var document in pack.Enclosed.OrderBy(d => d.Number, StringComparer.Ordinal))
        {
            cancellation.ThrowIfCancellationRequested();
            bag.Add($"documents/{document.FileName}", register.Content(document));
            done();
        }
        foreach (var enclosed in pack.Evidence)
        {
            cancellation.ThrowIfCancellationRequested();
            bag.Add($"evidence/{enclosed.Name}", enclosed.Read());
        }
        var words = PackPhrases.Languages.In(asked.Language);
        bag.Add("how-to-verify.txt", Encoding.UTF8.GetBytes(words.HowToVerify.ReplaceLineEndings("\n") + PackProofs.Program));
        bag.Add("index.html", Encoding.UTF8.GetBytes(index));
        if (pack.Checkpoint is { } checkpoint)
            bag.Add("log/checkpoint.json", CheckpointFile.Write(checkpoint, asked.Today, null));
        bag.Add("log/inclusion-proofs.json", PackProofs.Of(pack));
        bag.Add("register.json", PackFile.Of(pack));
        bag.Add("register.xlsx", TableWorkbook.Of(PackSheets.Of(pack.Contents, Language)));
        bag.Finish(
            [
                ("Bag-Software-Agent", $"ExamDocs {ProgramVersion.Current}"),
                ("External-Description", words.Description(asked.Employer, LocalDatePattern.Iso.Format(asked.AsOf))),
                ("External-Identifier", register.Identity),
            ],
            asked.Today
        );
    }

    private MessageLanguage Language => ReadPrintStyle.Screen(asked.Language.Tag)!;
}
