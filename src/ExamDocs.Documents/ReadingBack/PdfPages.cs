using PdfSharp.Pdf.IO;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Counts the pages of a printed file by opening it with a library that did not print it.</summary>
public static class PdfPages
{
    public static int Count(byte[] pdf)
    {
        using var stream = new MemoryStream(pdf);
        using var document = PdfReader.Open(stream, PdfDocumentOpenMode.Import);
        return document.PageCount;
    }
}
