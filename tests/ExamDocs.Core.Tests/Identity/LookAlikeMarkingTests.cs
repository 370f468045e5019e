using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Tests.Identity;

/// <summary>Markings that a reader takes for one are one, whatever the letters, digits and marks that they were typed with.</summary>
public sealed class LookAlikeMarkingTests
{
    [Theory]
    [InlineData("COR-1\ufe0f1", "A sign that chooses a form of the digit before it has no form of its own.")]
    [InlineData("COR-1\u034f1", "Nor has one that joins.")]
    [InlineData("COR-1\u03611", "A mark above makes no other digit.")]
    [InlineData("COR-1\udb40\udd001", "Nor has one of the rarer ones.")]
    [InlineData("COR-1\u28001", "A blank of Braille is read as other blanks are.")]
    [InlineData("COR-1\u0967", "A digit of another script is that digit.")]
    [InlineData("COR-\u0661\u0661", "So are all of them.")]
    [InlineData("COR-\u0660\u0661\u0661", "So is one that leads.")]
    [InlineData("\u0421\u041eR-11", "Letters of Cyrillic look like Latin ones.")]
    [InlineData("C\u039fR-11", "So do those of Greek.")]
    [InlineData("\u0441\u043er-11", "So do small ones.")]
    public void They_are_one_marking(string typed, string why)
    {
        Assert.True(Folded.Same("COR-11", typed), why);
        Assert.True(Folded.Same(typed, "cor 11"), why);
    }

    [Theory]
    [InlineData("COR-1-1", "A separator between digits separates.")]
    [InlineData("COR-1\u0662", "Another digit of another script is another one.")]
    [InlineData("\u0414\u041eR-11", "A letter that looks like no Latin one is itself.")]
    [InlineData("\u7ec3-11", "So are those of other writing.")]
    public void They_are_two(string typed, string why) => Assert.False(Folded.Same("COR-11", typed), why);
}
