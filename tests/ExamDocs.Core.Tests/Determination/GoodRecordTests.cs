using ExamDocs.Core.Criteria;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>All other tests here need a good record that is really good.</summary>
public sealed class GoodRecordTests
{
    public static TheoryData<string> Categories => [.. Catalogue.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Categories))]
    public void A_faultless_record_is_fit(string category)
    {
        var decided = Decided.From(GoodRecord.For(category));

        Assert.Empty(decided.Errors);
        Assert.Equal($"fit  {GoodRecord.NextBy} []", decided.Line());
    }

    [Fact]
    public void A_faultless_assembly_is_fit()
    {
        var decided = Decided.From(GoodRecord.Assembly());

        Assert.Empty(decided.Errors);
        Assert.All(["A", "B", "C"], id => Assert.Equal($"fit  {GoodRecord.NextBy} []", decided.Line(id)));
    }
}
