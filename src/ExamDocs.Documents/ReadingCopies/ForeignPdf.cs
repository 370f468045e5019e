using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using PdfSharp.Pdf.IO;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>Files of other programs.</summary>
public static class ForeignPdf
{
    /// <summary>A file that takes longer is built to take long, or too large for a reading copy.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    /// <summary>How long we wait for the reading to end once it was told to stop.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(1);

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
        using var stop = new CancellationTokenSource();
        return Read(pdf, patience, stop).Pages;
    }

    /// <returns>The pages, and the thread that read them, which has ended.</returns>
    internal static (byte[]? Pages, Thread Reading) Read(byte[] pdf, TimeSpan patience, CancellationTokenSource stop)
    {
        byte[]? result = null;
        var reading = new Thread(() => result = Read(pdf, stop.Token), Stack) { IsBackground = true };
        reading.Start();
        if (!reading.Join(patience))
        {
            // The library cannot be stopped, but whatever it reads or writes next throws.
            stop.Cancel();
            reading.Join(Grace);
        }
        return (stop.IsCancellationRequested ? null : result, reading);
    }

    private static byte[]? Read(byte[] pdf, CancellationToken stop)
    {
        try
        {
            if (PdfNesting.IsTooDeep(pdf, stop))
                return null;
            using var bytes = new StoppedStream(pdf, stop);
            using var theirs = PdfReader.Open(bytes, PdfDocumentOpenMode.Import);
            if (!HasTree(theirs))
                return null;
            using var written = new PdfDocument();
            for (var page = 0; page < theirs.PageCount; page++)
            {
                stop.ThrowIfCancellationRequested();
                written.AddPage(theirs.Pages[page]);
            }
            using var result = new StoppedStream(stop);
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
