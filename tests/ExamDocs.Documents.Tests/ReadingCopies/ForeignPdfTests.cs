using System.Text;
using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Documents.Tests.Printing;
using PdfSharp.Pdf;

namespace ExamDocs.Documents.Tests.ReadingCopies;

/// <summary>A stranger's file is made ready or refused, and never brings the program down.</summary>
public sealed class ForeignPdfTests
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(60);

    [Fact]
    public void A_file_of_another_program_becomes_one_that_can_be_copied()
    {
        using var theirs = new PdfDocument();
        theirs.AddPage();
        theirs.AddPage();
        using var bytes = new MemoryStream();
        theirs.Save(bytes, closeStream: false);
        Assert.Equal(2, CopyPart.PagesOf(ForeignPdf.Readable(bytes.ToArray(), Long)!));
    }

    [Fact]
    public void So_does_one_whose_objects_are_packed()
    {
        var packed = Tool.WithQpdf(TestPages.Of("one", "two"), "--object-streams=generate");
        Assert.Null(CopyPart.PagesOf(packed));
        Assert.Equal(2, CopyPart.PagesOf(ForeignPdf.Readable(packed, Long)!));
    }

    public static TheoryData<string, byte[]> Hostile { get; } =
        new()
        {
            { "nothing", [] },
            { "not a PDF", "hello"u8.ToArray() },
            { "a head alone", "%PDF-1.7\n"u8.ToArray() },
            { "nested without end", Encoding.ASCII.GetBytes("%PDF-1.7\n1 0 obj\n" + new string('[', 2_000_000)) },
            { "nested dictionaries", Encoding.ASCII.GetBytes("%PDF-1.7\n1 0 obj\n" + string.Concat(Enumerable.Repeat("<</A ", 200_000))) },
            { "cut short", TestPages.Of("one")[..200] },
            { "pages that hold themselves", Pdf("<</Type /Pages /Kids [2 0 R] /Count 1>>") },
            { "pages that hold each other", Pdf("<</Type /Pages /Kids [3 0 R] /Count 1>>", "<</Type /Pages /Kids [2 0 R] /Count 1>>") },
            { "a page that is above itself", Pdf("<</Type /Pages /Kids [3 0 R] /Count 1>>", "<</Type /Page /Parent 3 0 R>>") },
            {
                "a length that is its own",
                Pdf(
                    "<</Type /Pages /Kids [3 0 R] /Count 1>>",
                    "<</Type /Page /Parent 2 0 R /MediaBox [0 0 9 9] /Contents 4 0 R>>",
                    "<</Length 4 0 R>>\nstream\nq Q\nendstream"
                )
            },
            { "an object that is itself", Pdf("3 0 R", "2 0 R") },
            {
                "a count without end",
                Pdf("<</Type /Pages /Kids [3 0 R] /Count 2000000000>>", "<</Type /Pages /Kids [] /Count 2000000000>>")
            },
            { "packed and nested", Packed("/ObjStm", "/FlateDecode") },
            { "packed under a hidden name", Packed("/Obj#53tm", "/FlateDecode") },
            { "packed in another way", Packed("/ObjStm", "/LZWDecode") },
            { "locked", Tool.WithQpdf(TestPages.Of("one"), "--encrypt", "user", "owner", "256", "--") },
        };

    /// <summary>
    /// In this file the trailers lead round in a circle, and the library would read it for ever. It is given up in time, and its reading
    /// ends.
    /// </summary>
    [Fact]
    public void What_is_given_up_is_read_no_further()
    {
        var file = Pdf(prev: true, "<</Type /Pages /Kids [] /Count 0>>");
        using var stop = new CancellationTokenSource();
        var (pages, reading) = ForeignPdf.Read(file, TimeSpan.FromMilliseconds(200), stop);
        Assert.Null(pages);
        Assert.True(stop.IsCancellationRequested);
        Assert.True(reading.Join(Long));
    }

    private static byte[] Packed(string type, string filter)
    {
        using var packed = new MemoryStream();
        using (var zip = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionLevel.Fastest, leaveOpen: true))
            zip.Write(Encoding.ASCII.GetBytes("2 0 " + new string('[', 3_000_000)));
        var stream = Encoding.Latin1.GetString(packed.ToArray());
        return Encoding.Latin1.GetBytes(
            FormattableString.Invariant(
                $"%PDF-1.7\n4 0 obj\n<</Type {type} /N 1 /First 4 /Filter {filter} /Length {packed.Length}>>\nstream\n{stream}\nendstream\nendobj\n"
            )
        );
    }

    private static byte[] Pdf(params string[] objects) => Pdf(false, objects);

    /// <summary>A file with a catalogue as its first object; its table of objects may name itself as the one before.</summary>
    private static byte[] Pdf(bool prev, params string[] objects)
    {
        var (text, at) = (new StringBuilder("%PDF-1.7\n"), new List<int>());
        foreach (var (n, body) in objects.Prepend("<</Type /Catalog /Pages 2 0 R>>").Index())
        {
            at.Add(text.Length);
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{n + 1} 0 obj\n{body}\nendobj\n");
        }
        var xref = text.Length;
        text.Append(System.Globalization.CultureInfo.InvariantCulture, $"xref\n0 {at.Count + 1}\n0000000000 65535 f \n");
        foreach (var place in at)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{place:0000000000} 00000 n \n");
        var before = prev ? FormattableString.Invariant($" /Prev {xref}") : "";
        text.Append(
            System.Globalization.CultureInfo.InvariantCulture,
            $"trailer\n<</Size {at.Count + 1} /Root 1 0 R{before}>>\nstartxref\n{xref}\n%%EOF\n"
        );
        return Encoding.ASCII.GetBytes(text.ToString());
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void What_cannot_be_read_is_refused(string what, byte[] file)
    {
        Assert.NotEmpty(what);
        Assert.Null(ForeignPdf.Readable(file, Long));
    }
}
