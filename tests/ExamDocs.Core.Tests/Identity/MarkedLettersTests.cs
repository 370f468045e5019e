using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Tests.Identity;

/// <summary>A mark makes no other letter, neither does letter case, and what is left out alone is left out beside other slips too.</summary>
public sealed class MarkedLettersTests
{
    [Theory]
    [InlineData("CORDÉE-1", "CORDEE-1", "Accents are seldom typed on capitals.")]
    [InlineData("CORDE\u0301E-1", "CORDEE-1", "Nor where the mark is a character of its own.")]
    [InlineData("GÜRTEL-1", "GURTEL-1", "Nor is an umlaut on a keyboard without it.")]
    [InlineData("\u00c5S-1", "AS-1", "A ring above is a mark.")]
    [InlineData("\u0130P-1", "ip-1", "A keyboard makes a dotted capital of a small i.")]
    [InlineData("\u0131p-1", "IP-1", "And a dotless small letter of a capital I.")]
    [InlineData("ma\u00df-1", "MASS-1", "In capitals it is two letters.")]
    [InlineData("ma\u00df-1", "MA\u1e9e-1", "Or one capital of its own.")]
    [InlineData("HEL-01", "hel-o1", "Small letters, and the letter O for a zero.")]
    [InlineData("HEL-01", "HEl-O1", "A small l among capitals, and the letter O for a zero.")]
    public void They_are_one_marking(string typed, string again, string why)
    {
        Assert.True(Folded.Same(typed, again), why);
        Assert.True(Folded.Same(again, typed), why);
    }
}
