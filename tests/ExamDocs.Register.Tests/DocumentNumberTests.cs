using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

public sealed class DocumentNumberTests
{
    [Theory]
    [InlineData('R', 2026, 123, "R-2026-000123")]
    [InlineData('Q', 1900, 1, "Q-1900-000001")]
    [InlineData('P', 9999, 1_000_000, "P-9999-1000000")]
    public void A_number_is_written_and_read_back(char letter, int year, int sequence, string text)
    {
        var number = new DocumentNumber(letter, year, sequence);
        Assert.Equal(text, number.ToString());
        Assert.True(DocumentNumber.TryParse(text, out var read));
        Assert.Equal(number, read);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("r-2026-000123")]
    [InlineData("R-2026-123")]
    [InlineData("R-2026-0000123")]
    [InlineData("R-2026-000000")]
    [InlineData("R-2026-000123 ")]
    [InlineData("R-2026-+00123")]
    [InlineData("R-0026-000123")]
    [InlineData("R-2026-99999999999")]
    [InlineData("R-2026-000123-1")]
    [InlineData("RR-2026-000123")]
    [InlineData("R-2026-٠٠٠١٢٣")]
    public void Nothing_looser_is_read(string? text) => Assert.False(DocumentNumber.TryParse(text, out _));

    [Theory]
    [InlineData('r', 2026, 1)]
    [InlineData('R', 1899, 1)]
    [InlineData('R', 10_000, 1)]
    [InlineData('R', 2026, 0)]
    public void Nothing_outside_its_range_is_made(char letter, int year, int sequence) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new DocumentNumber(letter, year, sequence));
}
