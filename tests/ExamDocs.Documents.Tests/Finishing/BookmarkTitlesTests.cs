using ExamDocs.Documents.Finishing;

namespace ExamDocs.Documents.Tests.Finishing;

/// <summary>
/// The browser says a heading twice that it moves to the next page; the finished file says it once. A printed file with such a heading is
/// looked at in <see cref="Printing.EquipmentRecordTests"/>.
/// </summary>
public sealed class BookmarkTitlesTests
{
    [Theory]
    [InlineData("Parts renewedParts renewed", "Parts renewed")]
    [InlineData("PrüfungenPrüfungen", "Prüfungen")]
    [InlineData("Parts renewed", null)]
    [InlineData("Parts renewed Parts renewed", null)]
    [InlineData("HB-1HB-1", null)]
    [InlineData("1212", null)]
    [InlineData("", null)]
    public void Words_that_stand_twice_stand_once_and_an_id_stays(string title, string? once) =>
        Assert.Equal(once, BookmarkTitles.Once(title));
}
