using ExamDocs.Templates;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class LetterheadTests
{
    /// <summary>
    /// WCAG 2.2: black on white is 21 to 1, white on white 1; #767676 is the lightest grey that passes 4.5 (Understanding SC 1.4.3,
    /// techniques G18).
    /// </summary>
    [Theory]
    [InlineData("#000000", 21)]
    [InlineData("#ffffff", 1)]
    [InlineData("#767676", 4.54)]
    [InlineData("#777777", 4.48)]
    [InlineData("#ff0000", 4.0)]
    public void Contrast_is_as_the_guidelines_give_it(string colour, double expected) =>
        Assert.Equal(expected, Letterhead.ContrastWithWhite(colour), 0.005);

    [Theory]
    [InlineData("#777777")]
    [InlineData("red")]
    [InlineData("#000000;x")]
    public void A_colour_that_text_cannot_be_printed_in_is_none(string colour) =>
        Assert.Throws<ArgumentException>(() => new Letterhead { Name = "x", Colour = colour });

    /// <summary>What the pages themselves are coloured with is read on white by the same measure.</summary>
    [Theory]
    [InlineData("#9b2423")]
    [InlineData("#1b5e46")]
    [InlineData("#7a5200")]
    [InlineData("#4d545c")]
    [InlineData("#333a41")]
    public void The_documents_own_tones_can_be_read(string colour) =>
        Assert.True(Letterhead.ContrastWithWhite(colour) >= Letterhead.LeastContrast);
}
