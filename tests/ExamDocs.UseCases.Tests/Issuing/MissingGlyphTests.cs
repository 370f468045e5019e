using System.Text;
using ExamDocs.Documents.ReadingBack;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class MissingGlyphTests
{
    /// <summary>A Chinese character of extension G, which the fonts that are set up for printing do not have.</summary>
    private const string NoFontHasIt = "\U00030EDE";

    /// <summary>The letter in a circle, which the fonts lack, is not taken for the plain one that is printed beside it.</summary>
    [Theory]
    [InlineData(NoFontHasIt, "U+30EDE")]
    [InlineData("\u30A2\u32D0", "U+32D0")]
    public async Task A_report_that_cannot_be_printed_whole_is_held_back(string missing, string named)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01");
        record.Item("CON-01")["description"] = $"Connector (oval) {missing}";
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Empty(result.Documents);
        Assert.Equal(["PRN001"], Assert.Single(result.Refused).Codes, StringComparer.Ordinal);
        Assert.Contains(named, Assert.Single(result.Unprintable), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_danger_is_told_all_the_same()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        record.Item("CON-07")["description"] = $"Connector {NoFontHasIt}";
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Equal(
            ["notice", "quarantine-label"],
            result.Documents.Select(d => d.Document.Kind).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        Assert.NotEmpty(result.Unprintable);
    }

    [Theory]
    [InlineData("Żółć Ærøskøbing façade naïve")]
    [InlineData("Ελένη Καραβά")]
    [InlineData("Юрий Щедрин ёж")]
    [InlineData("½ ° ± × → ≤ € №")]
    [InlineData("e\u0301 combined")]
    public async Task What_the_fonts_have_is_not_missed(string typed)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01");
        record.Item("CON-01")["description"] = typed;
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Empty(result.Unprintable);
        Assert.Equal(["report", "due-label"], result.Documents.Select(d => d.Document.Kind), StringComparer.Ordinal);
    }

    [Fact]
    public void Only_unusual_letters_are_looked_for()
    {
        Assert.False(MissingGlyphs.MayOccurIn("<p>Plain &amp; simple – “quoted” &#xE9;</p>"));
        Assert.True(MissingGlyphs.MayOccurIn("<p>&#x6F22;</p>"));
        Assert.Equal("漢 (U+6F22)", MissingGlyphs.Name([new Rune(0x6F22)]));
    }
}
