using System.Text;
using ExamDocs.Intake.Workbook.Tables;

namespace ExamDocs.Intake.Tests.Workbook.Tables;

public sealed class TableCsvTests
{
    [Fact]
    public void It_is_a_line_for_the_headings_and_one_for_each_row() =>
        Assert.Equal(["\"part\",\"needed\"", "\"a, \"\"b\"\"\",3", ","], Lines(["a, \"b\"", 3], [null, null]));

    [Theory]
    [InlineData("=1+1")]
    [InlineData("@SUM(A1)")]
    [InlineData("+1")]
    [InlineData("-1+2")]
    [InlineData("\t=1")]
    public void No_text_is_left_a_formula(string text) => Assert.DoesNotContain(Lines([text, 1])[1].TrimStart('"')[0], "=@+-\t");

    private static string[] Lines(params IReadOnlyList<object?>[] rows)
    {
        var bytes = TableCsv.Of(new TableSheet("Order", ["part", "needed"], rows));
        Assert.Equal(Encoding.UTF8.Preamble.ToArray(), bytes[..3]);
        return Encoding.UTF8.GetString(bytes[3..]).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
    }
}
