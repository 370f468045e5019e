using System.Text;
using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Documents.Tests.Printing;
using PdfSharp.Pdf;

namespace ExamDocs.Documents.Tests.ReadingCopies;

/// <summary>A stranger's file is made ready or refused, and never brings the program down.</summary>
public sealed class ForeignPdfTests
{
    [Fact]
    public void A_file_of_another_program_becomes_one_that_can_be_copied()
    {
        using var theirs = new PdfDocument();
        theirs.AddPage();
        theirs.AddPage();
        using var bytes = new MemoryStream();
        theirs.Save(bytes, closeStream: false);
        Assert.Equal(2, CopyPart.PagesOf(ForeignPdf.Readable(bytes.ToArray())!));
    }

    [Fact]
    public void So_does_one_whose_objects_are_packed()
    {
        var packed = Tool.WithQpdf(TestPages.Of("one", "two"), "--object-streams=generate");
        Assert.Null(CopyPart.PagesOf(packed));
        Assert.Equal(2, CopyPart.PagesOf(ForeignPdf.Readable(packed)!));
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
            { "locked", Tool.WithQpdf(TestPages.Of("one"), "--encrypt", "user", "owner", "256", "--") },
        };

    [Theory]
    [MemberData(nameof(Hostile))]
    public void What_cannot_be_read_is_refused(string what, byte[] file)
    {
        Assert.NotEmpty(what);
        Assert.Null(ForeignPdf.Readable(file));
    }
}
