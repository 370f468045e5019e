using ExamDocs.Core.Records;
using ExamDocs.Templates.AuditPack;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>Stretches have every row once and in order, and none has too many.</summary>
public sealed class PackStretchTests
{
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(3, 5, 7)]
    [InlineData(200, 0, 0)]
    [InlineData(199, 2, 1)]
    [InlineData(700, 1300, 900)]
    public void Every_row_is_on_one(int gaps, int items, int documents)
    {
        var stretches = PackStretch.Of(
            [.. Numbers(gaps).Select(n => new PackGap(PackGapKind.NoDocumentInDate, n, "w"))],
            [.. Numbers(items).Select(Item)],
            [.. Numbers(documents).Select(Document)]
        );
        Assert.Equal(Numbers(gaps), stretches.SelectMany(s => s.Gaps).Select(g => g.About));
        Assert.Equal(Numbers(items), stretches.SelectMany(s => s.Items).Select(i => i.Item.Id));
        Assert.Equal(Numbers(documents), stretches.SelectMany(s => s.Documents).Select(d => d.Number));
        Assert.All(stretches, s => Assert.InRange(s.Gaps.Count + s.Items.Count + s.Documents.Count, 0, PackStretch.MostRows));
        Assert.Single(stretches, s => s.IsFirst);
        Assert.Single(stretches, s => s.IsLast);
        Assert.Equal(items > 0 ? 1 : 0, stretches.Count(s => s.BeginsItems));
        Assert.Equal(documents > 0 ? 1 : 0, stretches.Count(s => s.BeginsDocuments));
    }

    private static IEnumerable<string> Numbers(int count) => Enumerable.Range(0, count).Select(n => FormattableString.Invariant($"{n}"));

    private static PackItem Item(string id) =>
        new()
        {
            Item = new Item { Id = id },
            Standing = "s",
            Why = "w",
            IsInService = true,
        };

    private static PackDocument Document(string number) =>
        new()
        {
            Number = number,
            Kind = "report",
            IsCopy = false,
            Items = [],
            Pages = 1,
            Sha256 = "",
        };
}
