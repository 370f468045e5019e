using System.Security.Cryptography;
using ExamDocs.Documents.Comparing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Issuing;

/// <summary>An issued document with what is embedded in it.</summary>
/// <param name="Status">As the register has it.</param>
/// <param name="Contents">The data within.</param>
/// <param name="Pdf">The whole file.</param>
internal sealed record EarlierDocument(DocumentStatus Status, DocumentContents Contents, byte[] Pdf)
{
    /// <summary>The photos and the logo that it shows, each as base64.</summary>
    public IReadOnlyList<string> Pictures => field ??= [.. DrawnPictures.Of(Pdf).Select(p => Convert.ToBase64String(p.Jpeg.Span))];

    /// <summary>Whether a job would print this document once more: one kind, language and form, about the same items.</summary>
    public bool IsInTheFormOf(DocumentJob job) =>
        string.Equals(Status.Kind, job.Type.Kind, StringComparison.Ordinal)
        && Contents.Basis.Language == job.Language
        && (Contents.Basis.PerItem == job.PerItem || job.Type != DocumentTypes.Report)
        && (Contents.Basis.CopyOf is null) == (job.CopyOf is null)
        && ItemIds.Same(Contents.Basis.Items, [.. job.Items.Select(i => i.Item.Id ?? "")]);

    /// <summary>The same for documents of one record, decided on one day with the same history.</summary>
    public string VisitKey
    {
        get
        {
            var known = DocumentFile.Write(
                new DocumentBasis
                {
                    Number = "",
                    Kind = "",
                    Items = [],
                    IssuedOn = Contents.Basis.AsOf,
                    AsOf = Contents.Basis.AsOf,
                    Language = Language.English,
                    Version = "",
                    History = Contents.Basis.History,
                }
            );
            var record = AttachedFiles.Find(Pdf, EmbeddedFiles.RecordName, DocumentFile.MaxBytes)!;
            return Convert.ToHexStringLower(SHA256.HashData([.. SHA256.HashData(known), .. SHA256.HashData(record)]));
        }
    }
}
