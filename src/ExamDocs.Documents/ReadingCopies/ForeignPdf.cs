using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using PdfSharp.Pdf.IO;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>Files of other programs.</summary>
public static class ForeignPdf
{
    /// <summary>A file that takes longer is built to take long, or too large for a reading copy.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    /// <summary>More than a thread has otherwise: the library calls itself for what lies within something else.</summary>
    private const int Stack = 64 * 1024 * 1024;

    private const int MostNodes = 100_000;

    public static bool Is(ReadOnlySpan<byte> file) => file.StartsWith("%PDF"u8);

    /// <summary>The same pages, written so that they can go into a reading copy.</summary>
    /// <param name="pdf">The file.</param>
    /// <param name="patience">How long to wait for them; <see cref="Timeout.InfiniteTimeSpan"/> for a file that was read before.</param>
    /// <returns>Null where it is locked, damaged, takes too long or is of a kind that cannot be read.</returns>
    public static byte[]? Readable(byte[] pdf, TimeSpan patience)
    {
        byte[]? result = null;
        // The library cannot be stopped. A thread that is given up ends with the program.
        var reading = new Thread(() => result = Read(pdf), Stack) { IsBackground = true };
        reading.Start();
        return reading.Join(patience) ? result : null;
    }

    private static byte[]? Read(byte[] pdf)
    {
        if (PdfNesting.IsTooDeep(pdf))
            return null;
        try
        {
            using var bytes = new MemoryStream(pdf);
            using var theirs = PdfReader.Open(bytes, PdfDocumentOpenMode.Import);
            if (!HasTree(theirs))
                return null;
            using var written = new PdfDocument();
            for (var page = 0; page < theirs.PageCount; page++)
                written.AddPage(theirs.Pages[page]);
            using var result = new MemoryStream();
            written.Save(result, closeStream: false);
            return CopyPart.PagesOf(result.ToArray()) is null ? null : result.ToArray();
        }
        // A stranger's file may break the library in any way.
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return null;
        }
    }

    /// <summary>Whether the pages hang in a tree: in a circle the library and the program come to their end.</summary>
    private static bool HasTree(PdfDocument pdf)
    {
        var (left, seen) = (new Stack<(PdfItem? Node, int Depth)>(), new HashSet<PdfObjectID>());
        left.Push((pdf.Internals.Catalog.Elements["/Pages"], 0));
        while (left.TryPop(out var at))
        {
            if (at.Node is PdfReference { ObjectID: var id } && !seen.Add(id))
                return false;
            if (at.Depth > PdfNesting.Deepest || seen.Count + left.Count > MostNodes)
                return false;
            if ((at.Node is PdfReference { Value: var value } ? value : at.Node) is not PdfDictionary node)
                continue;
            foreach (var kid in node.Elements.GetArray("/Kids")?.Elements ?? Enumerable.Empty<PdfItem>())
                left.Push((kid, at.Depth + 1));
        }
        return true;
    }
}
