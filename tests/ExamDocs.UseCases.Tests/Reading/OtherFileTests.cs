using System.Text;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Tests.Reading;

/// <summary>What holds no record is told by its first bytes.</summary>
public sealed class OtherFileTests
{
    [Theory]
    [InlineData("\u0089PNG")]
    [InlineData("\u00FF\u00D8\u00FF\u00E0")]
    [InlineData("GIF8")]
    [InlineData("II*\0")]
    public void A_picture_is_told(string first) => Assert.Contains("this is a picture", Of(first), StringComparison.Ordinal);

    [Theory]
    [InlineData("Dear")]
    [InlineData("<htm")]
    [InlineData("\0\0\0\u0018")]
    public void Any_other_file_is_told(string first) => Assert.Contains("no file that can be read", Of(first), StringComparison.Ordinal);

    [Theory]
    [InlineData("{ \"f")]
    [InlineData("\r\n {")]
    [InlineData("    ")]
    [InlineData("[1]")]
    [InlineData("\u00EF\u00BB\u00BF{")]
    [InlineData("\u00FF\u00FE{\0")]
    public void What_may_be_json_is_left_to_its_reader(string first) => Assert.Null(Of(first));

    private static string? Of(string first) => OtherFile.WhyNot(Encoding.Latin1.GetBytes(first));
}
