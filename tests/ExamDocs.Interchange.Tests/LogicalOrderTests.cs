namespace ExamDocs.Interchange.Tests;

public sealed class LogicalOrderTests
{
    /// <summary>
    /// As pdftotext reads two Hebrew words with a comma, of which the first lies to the right; the aleph has its point before it.
    /// </summary>
    [Theory]
    [InlineData("N-1 \u202B\u05D2\u05D3\u202C, \u202B\u05B5\u05D0\u05EA\u202C\n", "N-1 \u05D0\u05B5\u05EA, \u05D2\u05D3\n")]
    [InlineData(",\u202B\u05D0\u202C\n\u202B\u05D1\u202C\n", "\u05D0,\n\u05D1\n")]
    [InlineData("a\u202B\u035C\u0644\u202Cb", "a\u0644\u035Cb")]
    [InlineData("no word that runs to the left, \u0301 none", "no word that runs to the left, \u0301 none")]
    public void Words_that_run_to_the_left_are_put_as_they_are_written(string read, string written) =>
        Assert.Equal(written, LogicalOrder.Of(read));

    /// <summary>Printed from left to right by mistake, the words of a sentence would be read in another order.</summary>
    [Fact]
    public void Words_laid_in_the_wrong_order_are_not_put_right() =>
        Assert.NotEqual("\u05D0\u05EA, \u05D2\u05D3", LogicalOrder.Of("\u202B\u05D0\u05EA\u202C, \u202B\u05D2\u05D3\u202C"));
}
