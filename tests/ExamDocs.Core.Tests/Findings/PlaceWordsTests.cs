using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Tests.Findings;

/// <summary>Places in as few words as they allow.</summary>
public sealed class PlaceWordsTests
{
    [Theory]
    [InlineData("row 4", 4)]
    [InlineData("rows 4, 5", 4, 5)]
    [InlineData("rows 4 to 6", 6, 5, 4, 4)]
    [InlineData("rows 4 to 12, 15", 4, 5, 6, 7, 8, 9, 10, 11, 12, 15)]
    public void Rows_that_follow_each_other_are_a_range(string words, params int[] rows) => Assert.Equal(words, PlaceWords.Rows(rows).Text);

    [Fact]
    public void Of_very_many_the_first_are_named_and_all_when_asked_for()
    {
        var group = Group(Enumerable.Range(0, 30).Select(n => $"C{(3 * n) + 2}"));

        Assert.EndsWith("35 and 18 more", PlaceWords.Of(group).Text, StringComparison.Ordinal);
        Assert.EndsWith(" 89", PlaceWords.Of(group, all: true).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("at F5", "F5")]
    [InlineData("in column F, rows 5, 6", "F5", "F6")]
    [InlineData("in row 5, columns F, AB", "F5", "AB5")]
    [InlineData("in rows 5 to 7, columns F, G", "F5", "G6", "F7")]
    [InlineData("at #/items/0/id", "#/items/0/id")]
    [InlineData("at #/items/0/id, #/items/4/id", "#/items/0/id", "#/items/4/id")]
    [InlineData("", "")]
    public void Cells_by_column_and_row(string words, params string[] at) => Assert.Equal(words, PlaceWords.Of(Group(at)).Text);

    [Fact]
    public void A_column_is_named_by_its_heading_too()
    {
        SourcePlace[] places =
        [
            new("visit.xlsx", "Slings", "H4") { Heading = "Date of manufacture" },
            new("visit.xlsx", "Slings", "H5") { Heading = "Date of manufacture" },
        ];

        Assert.Equal("at H4 (Date of manufacture)", PlaceWords.Of(new([Found], [places[0]])).Text);
        Assert.Equal("in column H (Date of manufacture), rows 4, 5", PlaceWords.Of(new([Found], places)).Text);
    }

    private static Finding Found => new("IDN900", Severity.Error, "/visit", $"it is wrong", $"Type it.", "");

    private static FindingGroup Group(IEnumerable<string> at) =>
        new([Found], [.. at.Select(a => new SourcePlace("visit.xlsx", "Slings", a))]);
}
