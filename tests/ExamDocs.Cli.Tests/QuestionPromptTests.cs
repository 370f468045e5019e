using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Tests;

/// <summary>Enter takes what is proposed, a number its choice, anything else is asked again, and an end of input accepts nothing.</summary>
public sealed class QuestionPromptTests
{
    private static readonly AdoptQuestion Question = new("What is the column 'Plate'?", ["the id", "the serial", "a remark"], 1);

    [Theory]
    [InlineData("\n", 1)]
    [InlineData("1\n", 0)]
    [InlineData(" 3 \n", 2)]
    [InlineData("0\n4\nyes\n-1\n1\n", 0)]
    public void An_answer(string typed, int expected)
    {
        using var output = new StringWriter();
        using var input = new StringReader(typed);
        Assert.Equal(expected, new QuestionPrompt(input, output).Ask(Question));
        Assert.Contains("2  the serial", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("[2]", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_end_of_the_input_accepts_nothing()
    {
        using var output = new StringWriter();
        using var input = new StringReader("");
        Assert.Throws<OperationCanceledException>(() => new QuestionPrompt(input, output).Ask(Question));
    }
}
