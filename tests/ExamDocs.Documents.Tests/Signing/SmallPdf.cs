using System.Globalization;
using System.Text;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Signing;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>A page with nothing on it, written as the browser writes its files.</summary>
internal static class SmallPdf
{
    public const string Description = "Electronic signature";

    public static byte[] Printed { get; } =
        Written(
            "<</Type /Catalog\n/Lang (en)\n/Pages 3 0 R>>",
            "<</Title (t)\n/Producer (p)\n/CreationDate (D:20260512093000+00'00')>>",
            "<</Type /Pages\n/Count 1\n/Kids [4 0 R]>>",
            "<</Type /Page\n/MediaBox [0 0 100 100]\n/Parent 3 0 R\n/Contents 5 0 R>>",
            "<</Length 0>>\nstream\n\nendstream"
        );

    public static Task<byte[]> SignedAsync(DocumentSigner signer) => Finisher.FinishSignedAsync(Printed, [], signer, Description);

    private static byte[] Written(params string[] objects)
    {
        var file = new StringBuilder("%PDF-1.4\n");
        var offsets = new List<int>();
        foreach (var (number, body) in objects.Index())
        {
            offsets.Add(file.Length);
            file.Append(CultureInfo.InvariantCulture, $"{number + 1} 0 obj\n{body}\nendobj\n");
        }
        var table = file.Length;
        file.Append(CultureInfo.InvariantCulture, $"xref\n0 {objects.Length + 1}\n0000000000 65535 f \n");
        foreach (var offset in offsets)
            file.Append(CultureInfo.InvariantCulture, $"{offset:0000000000} 00000 n \n");
        file.Append(
            CultureInfo.InvariantCulture,
            $"trailer\n<</Size {objects.Length + 1}\n/Root 1 0 R\n/Info 2 0 R>>\nstartxref\n{table}\n%%EOF\n"
        );
        return Encoding.Latin1.GetBytes(file.ToString());
    }
}
