using System.Text;
using ExamDocs.Documents.LabelSheets;

namespace ExamDocs.Documents.Tests.LabelSheets;

public sealed class StockFileTests
{
    private const string Roll =
        """{"name":"mine","what":"a roll","pageWidthMm":104,"pageHeightMm":152,"""
        + """ "labelWidthMm":100,"labelHeightMm":150,"leftMm":2,"topMm":1}""";

    [Fact]
    public void A_roll_needs_no_rows_columns_or_pitch()
    {
        var (stock, faults) = Parse(Roll);
        Assert.Empty(faults);
        Assert.Equal(
            (1, 100d, 150d, LabelFormat.Quarantine, 1d),
            (stock!.PerSheet, stock.PitchXMm, stock.PitchYMm, stock.Format, stock.Scale)
        );
    }

    [Theory]
    [InlineData("", "it is not JSON: see line 1")]
    [InlineData("{\n\"name\": }", "it is not JSON: see line 2")]
    [InlineData("[]", "one JSON object")]
    [InlineData("""{"name":"mine"}""", "pageWidthMm is missing")]
    [InlineData("REPLACE \"leftMm\" WITH \"lftMm\"", "lftMm is not known")]
    [InlineData("REPLACE \"topMm\" WITH \"leftMm\"", "leftMm stands there twice")]
    [InlineData("REPLACE 104 WITH \"wide\"", "pageWidthMm is not what is wanted there")]
    [InlineData("REPLACE \"mine\" WITH null", "name is not what is wanted there")]
    [InlineData("REPLACE \"mine\" WITH \" \"", "name is blank")]
    [InlineData("REPLACE 104 WITH 101", "the labels do not lie on the page")]
    [InlineData("REPLACE 104 WITH -104", "pageWidthMm is -104")]
    [InlineData("REPLACE 104 WITH 1e999", "pageWidthMm is")]
    [InlineData("REPLACE \"leftMm\":2 WITH \"leftMm\":-2", "leftMm is -2")]
    [InlineData("REPLACE \"leftMm\":2 WITH \"leftMm\":2,\"rows\":0", "rows and columns are at least 1")]
    [InlineData("REPLACE \"leftMm\":2 WITH \"leftMm\":2,\"rows\":2.5", "rows is not what is wanted there")]
    [InlineData("REPLACE \"labelHeightMm\":150 WITH \"labelHeightMm\":140", "no label has the shape of 100 x 140 mm")]
    [InlineData("REPLACE \"labelWidthMm\":100,\"labelHeightMm\":150 WITH \"labelWidthMm\":90,\"labelHeightMm\":135", "printed at 90 %")]
    [InlineData("REPLACE \"pageHeightMm\":152 WITH \"pageHeightMm\":302,\"rows\":2,\"pitchYMm\":149", "labels would overlap: pitchYMm")]
    [InlineData(
        "REPLACE \"leftMm\":2 WITH \"leftMm\":2,\"eyelet\":{\"xMm\":52,\"yMm\":40,\"diameterMm\":8}",
        "the eyelet of mine would lie on what is printed"
    )]
    [InlineData("REPLACE \"leftMm\":2 WITH \"leftMm\":2,\"eyelet\":{\"xMm\":52,\"yMm\":40}", "eyelet is not what is wanted there")]
    public void A_fault_is_said_kindly(string file, string said)
    {
        var (stock, faults) = Parse(Edited(file));
        Assert.Null(stock);
        Assert.Contains(faults, f => f.Contains(said, StringComparison.Ordinal));
        Assert.All(faults, f => Assert.DoesNotContain("System.", f, StringComparison.Ordinal));
    }

    [Fact]
    public void An_eyelet_in_the_place_that_the_label_leaves_free_is_none_of_the_faults() =>
        Assert.Empty(Parse(Edited("REPLACE \"leftMm\":2 WITH \"leftMm\":2,\"eyelet\":{\"xMm\":52,\"yMm\":11.1,\"diameterMm\":11}")).Faults);

    private static (LabelStock? Stock, IReadOnlyList<string> Faults) Parse(string json) => StockFile.Parse(Encoding.UTF8.GetBytes(json));

    private static string Edited(string file)
    {
        if (!file.StartsWith("REPLACE ", StringComparison.Ordinal))
            return file;
        var parts = file["REPLACE ".Length..].Split(" WITH ");
        Assert.Contains(parts[0], Roll, StringComparison.Ordinal);
        return Roll.Replace(parts[0], parts[1], StringComparison.Ordinal);
    }
}
