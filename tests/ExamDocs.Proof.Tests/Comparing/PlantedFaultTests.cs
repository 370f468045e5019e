using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Comparing;

/// <summary>The comparison sees a fault in either of the two.</summary>
public sealed class PlantedFaultTests
{
    [Theory]
    [InlineData("W", false)]
    [InlineData("U", false)]
    [InlineData("D", true)]
    public void A_reason_dropped_by_one_of_them_is_seen(string family, bool later)
    {
        var pair = Enumerable
            .Range(1, 5000)
            .SelectMany(seed => Compared.Pairs(Generator.Make(seed)))
            .First(p =>
                !p.Lenient
                && p.Second.Codes.Any(code => code.StartsWith(family, StringComparison.Ordinal))
                && (p.Second.Until is not null) == later
            );
        Assert.True(pair.Agrees);
        Answer fewer = pair.Second with
        {
            Codes = pair.Second.Codes.Where(code => !code.StartsWith(family, StringComparison.Ordinal)).ToHashSet(),
        };
        Assert.False((pair with { Second = fewer }).Agrees);
        Assert.False((pair with { Second = pair.Second with { Outcome = "fit" } }).Agrees);
        Assert.False(
            (pair with { Second = pair.Second with { Until = pair.Second.Until?.AddDays(1) ?? new DateOnly(2026, 1, 1) } }).Agrees
        );
    }
}
