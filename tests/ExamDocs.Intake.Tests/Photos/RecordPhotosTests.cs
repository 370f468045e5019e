using ExamDocs.Core.Findings;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Intake.Tests.Photos;

/// <summary>All photos of a record: each file once, each fault where it is named, and an end to it.</summary>
public sealed class RecordPhotosTests : IDisposable
{
    private readonly AlbumFolder _album = new();

    public void Dispose() => _album.Dispose();

    [Fact]
    public void A_file_named_often_is_opened_once_whatever_it_is_called()
    {
        _album.Put("photos/a.jpg", Pictures.Corners(16, 8));
        _album.Put("b.jpg", [1, 2, 3]);
        var budget = new PhotoBudget();
        var found = RecordPhotos.Check(
            AlbumFolder.Record("photos/a.jpg", null, "photos\\a.jpg", "b.jpg", "b.jpg", "", " ", "./b.jpg", "photos/a.jpg"),
            _album.Path,
            budget
        );

        Assert.Equal((2, 128L), (budget.FilesOpened, budget.PixelsUnpacked));
        Assert.Equal(
            [
                "/examinations/0/observations/3/photo 'b.jpg'",
                "/examinations/0/observations/4/photo 'b.jpg'",
                "/examinations/0/observations/7/photo './b.jpg'",
            ],
            found.Select(f => $"{f.Path} {f.Message.Text.Split(' ')[2]}")
        );
    }

    [Fact]
    public void Beyond_five_hundred_photos_there_is_one_finding_and_no_more_reading()
    {
        _album.Put("a.jpg", Pictures.Corners(16, 8));
        var budget = new PhotoBudget();
        var found = RecordPhotos.Check(
            AlbumFolder.Record(
                Enumerable
                    .Range(0, 499)
                    .Select(n => $"./{new string('/', n)}a.jpg")
                    .Append("missing.jpg")
                    .Append("a.jpg")
                    .Append("last.jpg")
            ),
            _album.Path,
            budget
        );

        Assert.Equal(
            ["INT042 /examinations/0/observations/499/photo", "INT046 /examinations/0/observations/500/photo"],
            found.Select(f => $"{f.Code} {f.Path}")
        );
        Assert.Equal((1, 128L), (budget.FilesOpened, budget.PixelsUnpacked));
        Assert.All(found, f => Assert.Equal(Severity.Warning, f.Severity));
    }

    [Fact]
    public void Bytes_and_pixels_come_to_an_end_before_they_are_unpacked()
    {
        var budget = new PhotoBudget();
        for (var n = 0; n < 60; n++)
            budget.Pixels(100_000_000);
        Assert.Throws<PhotosSpentException>(() => budget.Pixels(1));
        Assert.Equal(6_000_000_000, budget.PixelsUnpacked);
        budget.File(2L * 1024 * 1024 * 1024);
        Assert.Throws<PhotosSpentException>(() => budget.File(1));

        _album.Put("a.jpg", Pictures.Corners(16, 8));
        Assert.Equal("INT046", Assert.Single(RecordPhotos.Check(AlbumFolder.Record("a.jpg"), _album.Path, budget)).Code);
    }

    [Fact]
    public void A_photo_named_by_its_sum_is_that_photo()
    {
        var (taken, other) = (Pictures.Corners(16, 8), Pictures.Corners(8, 16));
        var name = $"photos/sha256-{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(taken))}.jpg";
        _album.Put(name, taken);
        Assert.Empty(RecordPhotos.Check(AlbumFolder.Record(name), _album.Path));
        Assert.Equal("INT090", _album.Fault(other, name).Code);
    }

    [Fact]
    public void Every_rule_on_photos_is_a_warning_with_a_code_of_its_own()
    {
        Assert.Equal(["INT042", "INT043", "INT044", "INT045", "INT046", "INT090"], PhotoRules.All.Select(r => r.Code));
        Assert.All(PhotoRules.All, r => Assert.Equal(Severity.Warning, r.Severity));
    }
}
