using System.Text;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Json;

namespace ExamDocs.Intake.Tests.Json;

/// <summary>How long a text may be, and what is kept of one that is longer.</summary>
public sealed class TextLengthTests
{
    [Theory]
    [InlineData("x", 32_767, true)]
    [InlineData("x", 32_768, false)]
    [InlineData("\\u0041", 32_767, true)]
    [InlineData("\\n", 32_768, false)]
    [InlineData("\u00E9", 32_767, true)]
    [InlineData("\u4E00", 32_768, false)]
    [InlineData("\U0001F333", 16_383, true)]
    [InlineData("\U0001F333", 16_384, false)]
    public void A_text_is_read_up_to_what_a_cell_may_hold(string letter, int times, bool isRead)
    {
        var read = Read(
            "{\"format\":\"examdocs/1\",\"visit\":{},\"items\":[{\"description\":\""
                + string.Concat(Enumerable.Repeat(letter, times))
                + "\"}]}"
        );
        Assert.Equal(isRead, read.Record is not null);
        if (!isRead)
            Assert.StartsWith(
                "the text at #/items/0/description is longer than 32,767 characters",
                read.Unreadable,
                StringComparison.Ordinal
            );
    }

    [Fact]
    public void Of_an_identity_that_is_too_long_the_beginning_is_kept()
    {
        var read = Read(
            "{\"format\":\"examdocs/1\",\"visit\":{},"
                + $"\"items\":[{{\"id\":\"{new string('A', 81)}\"}},{{\"id\":\"{new string('B', 80)}\"}}]}}"
        );
        Assert.Equal([new string('A', 79) + "…", new string('B', 80)], read.Record!.Items.Select(i => i.Id));
        Assert.Equal(("INT009", "/items/0/id"), Assert.Single(read.Findings.Select(f => (f.Code, f.Path))));
    }

    /// <summary>The whole of it is the note of a defect, and is printed with it.</summary>
    [Fact]
    public void Of_an_answer_that_is_none_of_the_words_the_beginning_is_kept()
    {
        var typed = "defect " + new string('x', 500);
        var seen = Read($"{{\"format\":\"examdocs/1\",\"visit\":{{}},\"examinations\":[{{\"observations\":[{{\"state\":\"{typed}\"}}]}}]}}")
            .Record!.Examinations[0]
            .Observations[0];
        Assert.Equal((typed[..199] + "…", typed), (seen.StateAsTyped, seen.Note));
    }

    [Theory]
    [InlineData("abc", 3, "abc")]
    [InlineData("abcd", 3, "ab…")]
    [InlineData("a\U0001F333bc", 3, "a…")]
    public void A_text_is_cut_where_no_pair_is_torn(string text, int most, string cut) => Assert.Equal(cut, TextGuard.Cut(text, most));

    private static ReadResult Read(string json) => JsonRecordReader.Read(Encoding.UTF8.GetBytes(json), "visit.json");
}
