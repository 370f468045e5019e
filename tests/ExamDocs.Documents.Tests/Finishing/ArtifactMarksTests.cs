using System.Text;
using ExamDocs.Documents.Finishing;

namespace ExamDocs.Documents.Tests.Finishing;

public sealed class ArtifactMarksTests
{
    [Fact]
    public void Text_outside_every_tag_is_a_margin() =>
        Assert.Equal(
            "q\n/Artifact <</Type /Pagination>> BDC\nBT\n/F1 9 Tf\n(Page 1) Tj\nET\nEMC\nQ",
            Marked("q\nBT\n/F1 9 Tf\n(Page 1) Tj\nET\nQ")
        );

    [Fact]
    public void A_line_outside_every_tag_is_decoration_and_a_clip_is_none() =>
        Assert.Equal(
            "1 2 3 4 re W n\n/Artifact BMC\n0 0 9 9 re\n1 1 2 2 re\nf*\nEMC\n5 6 re",
            Marked("1 2 3 4 re W n\n0 0 9 9 re\n1 1 2 2 re\nf*\n5 6 re")
        );

    [Fact]
    public void What_is_tagged_stays() =>
        Assert.Equal("/P <</MCID 0>>BDC\nBT (a) Tj ET\n0 0 1 1 re f\nEMC", Marked("/P <</MCID 0>>BDC\nBT (a) Tj ET\n0 0 1 1 re f\nEMC"));

    [Fact]
    public void A_picture_is_decoration() => Assert.Equal("/Artifact BMC\n/X1 Do\nEMC", Marked("/X1 Do"));

    [Theory]
    [InlineData("/F1 Do", "an object that may hold text")]
    [InlineData("BT /P <</MCID 3>> BDC (a) Tj EMC ET", "a tag within unmarked text")]
    [InlineData("/P <</MCID 0>>BDC BT (a) Tj ET", "a tag without end")]
    public void What_cannot_be_told_apart_is_said(string content, string why) =>
        Assert.False(ArtifactMarks.On(Encoding.Latin1.GetBytes(content), n => n[0] == 'X').IsWhole, why);

    private static string Marked(string content)
    {
        var (marked, isWhole) = ArtifactMarks.On(Encoding.Latin1.GetBytes(content), n => n[0] == 'X');
        Assert.True(isWhole);
        return Encoding.Latin1.GetString(marked);
    }
}
