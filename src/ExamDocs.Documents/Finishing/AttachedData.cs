using System.Globalization;
using System.Security.Cryptography;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Finishing;

/// <summary>A JSON file within a document: what the document was made from (ISO 19005-3, 6.8).</summary>
/// <param name="Name">Its file name, plain letters.</param>
/// <param name="Description">What it is, for whoever opens the document.</param>
/// <param name="Content">Its bytes.</param>
public sealed record AttachedData(string Name, string Description, byte[] Content)
{
    // A visit's record goes into each of its documents; it is packed once.
    private byte[]? _packed;

    /// <returns>The number of the object that specifies the file.</returns>
    internal int AddTo(PdfTarget target, string date)
    {
#pragma warning disable CA5351 // The format asks for MD5 (ISO 32000-1, 7.11.4); nothing is proved by it.
        var sum = Convert.ToHexString(MD5.HashData(Content));
#pragma warning restore CA5351
        var file = target.Add(
            PdfTarget.PackedStream(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"/Type /EmbeddedFile\n/Subtype /application#2Fjson\n/Params <</Size {Content.Length}\n/ModDate "
                        + $"{date}\n/CheckSum <{sum}>>>\n"
                ),
                _packed ??= PdfTarget.Packed(Content)
            )
        );
        var (name, reference) = (PdfText.Write(Name), string.Create(CultureInfo.InvariantCulture, $"{file} 0 R"));
        return target.Add(
            $"<</Type /Filespec\n/F {name}\n/UF {name}\n/Desc {PdfText.Write(Description)}\n/AFRelationship /Data\n/EF <</F "
                + $"{reference}\n/UF {reference}>>>>"
        );
    }
}
