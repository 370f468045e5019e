using System.Globalization;
using ExamDocs.Templates.Label;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class ReadingDistanceTests
{
    // h = l / Z: 2 m and 1.524 m (5 ft) at Z = 40 give 50 and 38.1 mm; a scale of 95 % must still leave that.
    [Theory]
    [InlineData("1.5", "40", 37.5)]
    [InlineData("2", "40", 50)]
    [InlineData("1.524", "40", 38.1)]
    [InlineData("1", "20", 50)]
    public void The_sign_is_as_large_as_the_distance_asks(string metres, string factor, double height)
    {
        var sign = (double)new ReadingDistance(Number(metres), Number(factor)).SignMm;
        Assert.InRange(sign * 0.95, height, height + 1);
    }

    [Fact]
    public void It_never_gets_smaller_than_usual() => Assert.Equal(40m, new ReadingDistance(0.5m, 100).SignMm);

    [Theory]
    [InlineData("0.2", "40", "0.3 to 20 m")]
    [InlineData("1.5", "0", "5 to 200")]
    [InlineData("1.5", "20", "a sign of 79 mm")]
    [InlineData("3.5", "100", "the signal word")]
    public void What_a_label_cannot_give_is_refused(string metres, string factor, string why)
    {
        Assert.Contains(why, ReadingDistance.Objection(Number(metres), Number(factor)), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new ReadingDistance(Number(metres), Number(factor)));
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
