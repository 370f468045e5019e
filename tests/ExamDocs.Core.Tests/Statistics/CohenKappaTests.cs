using ExamDocs.Core.Statistics;

namespace ExamDocs.Core.Tests.Statistics;

public sealed class CohenKappaTests
{
    /// <summary>The table that is widely printed with Cohen, Educational and Psychological Measurement 20:37-46 (1960): 0.4.</summary>
    [Fact]
    public void Kappa_is_as_published()
    {
        var kappa = new CohenKappa(20, 5, 10, 15);

        Assert.Equal(0.4, kappa.Value!.Value, 1e-12);
        Assert.Equal((50, 35), (kappa.Pairs, kappa.Alike));
    }

    [Fact]
    public void Full_agreement_is_one_and_agreement_by_chance_is_nought()
    {
        Assert.Equal(1, new CohenKappa(7, 0, 0, 3).Value!.Value, 1e-12);
        Assert.Equal(0, new CohenKappa(4, 4, 4, 4).Value!.Value, 1e-12);
        Assert.Equal(-1, new CohenKappa(0, 5, 5, 0).Value!.Value, 1e-12);
    }

    [Fact]
    public void Where_everybody_always_said_the_same_there_is_no_kappa()
    {
        Assert.Null(new CohenKappa(0, 0, 0, 12).Value);
        Assert.Null(new CohenKappa(12, 0, 0, 0).Value);
    }

    [Fact]
    public void Nothing_judged_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new CohenKappa(0, 0, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CohenKappa(5, -1, 2, 3));
    }
}
