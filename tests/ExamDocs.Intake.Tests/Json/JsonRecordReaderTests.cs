using System.Text;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Tests.Binding;

namespace ExamDocs.Intake.Tests.Json;

/// <summary>What is no JSON, or too much of it, is refused in one sentence that says where.</summary>
public sealed class JsonRecordReaderTests
{
    [Theory]
    [InlineData("{\n  \"format\": \"examdocs/1\",\n  \"visit\": }", "the file is not valid JSON at line 3, byte 12")]
    [InlineData("{ \"format\": \"examdocs/1\" ", "the file is not valid JSON at line 1, byte 26")]
    [InlineData("", "the file is not valid JSON at line 1, byte 1")]
    [InlineData("{ 'format': 1 }", "the file is not valid JSON at line 1, byte 3")]
    [InlineData("{ \"format\": \"examdocs/1\", }", "the file is not valid JSON at line 1, byte 27")]
    public void Broken_JSON_names_line_and_byte(string text, string said) => AssertRefused(text, said);

    [Fact]
    public void Deep_nesting_is_refused()
    {
        var deep = string.Concat(Enumerable.Repeat("[", 100_000));
        var read = SmallRecord.Read(deep);
        Assert.Null(read.Record);
        Assert.StartsWith("the file is not valid JSON at line 1, byte 3", read.Unreadable, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(31, true)]
    [InlineData(32, false)]
    public void Nesting_is_read_to_thirty_two_levels(int lists, bool isRead)
    {
        var text = $"{{ \"format\": \"examdocs/1\", \"remarks\": {new string('[', lists)}{new string(']', lists)} }}";
        Assert.Equal(isRead, SmallRecord.Read(text).Record is not null);
    }

    [Fact]
    public void A_byte_order_mark_makes_no_difference()
    {
        byte[] marked = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(SmallRecord.Text)];
        Assert.Empty(JsonRecordReader.Read(marked, "record.json").Findings);
    }

    [Fact]
    public void Bytes_that_are_no_UTF_8_are_refused()
    {
        var bytes = Encoding.Latin1.GetBytes(SmallRecord.Text.Replace("Harness", "H\u00E4rness", StringComparison.Ordinal));
        var read = JsonRecordReader.Read(bytes, "record.json");
        Assert.Null(read.Record);
        Assert.NotNull(read.Unreadable);
    }

    [Fact]
    public void A_file_larger_than_the_limit_is_refused_before_it_is_parsed()
    {
        var read = JsonRecordReader.Read(new byte[JsonRecordReader.MaxBytes + 1], "record.json");
        Assert.Equal("the file is larger than 64 MiB", read.Unreadable);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("\"examdocs/1\"")]
    public void What_is_no_record_in_braces_is_a_finding(string text)
    {
        var finding = SmallRecord.Only(text);
        Assert.Equal(("INT003", ""), (finding.Code, finding.Path));
    }

    [Fact]
    public void A_finding_is_located_by_file_and_pointer()
    {
        var read = SmallRecord.Read(SmallRecord.Text.Replace("\"clear\"", "\"clera\"", StringComparison.Ordinal));
        Assert.Equal("record.json#/examinations/0/observations/0/state", read.Sources.Locate(Assert.Single(read.Findings).Path));
    }

    private static void AssertRefused(string text, string said)
    {
        var read = SmallRecord.Read(text);
        Assert.Null(read.Record);
        Assert.Empty(read.Findings);
        Assert.Equal(said, read.Unreadable);
    }
}
