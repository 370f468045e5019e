using System.Diagnostics;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Intake.Tests.Photos;

/// <summary>A record brings no file into print that does not lie in its own folder.</summary>
public sealed class PhotoPathTests : IDisposable
{
    private readonly AlbumFolder _album = new();

    public PhotoPathTests() => File.WriteAllBytes(_album.Outside("other.jpg"), Pictures.Corners(16, 8));

    public void Dispose() => _album.Dispose();

    [Theory]
    [InlineData("../other.jpg")]
    [InlineData("..\\other.jpg")]
    [InlineData("photos/../../other.jpg")]
    [InlineData("photos/../a.jpg")]
    [InlineData("/etc/hostname")]
    [InlineData("C:\\photos\\a.jpg")]
    [InlineData("C:a.jpg")]
    [InlineData("\\\\server\\share\\a.jpg")]
    [InlineData("//server/share/a.jpg")]
    [InlineData("file:///etc/hostname")]
    [InlineData("a.jpg:stream")]
    public void A_name_that_leads_out_is_refused_whether_or_not_the_file_is_there(string name) =>
        Assert.Equal("INT043", _album.Fault(name).Code);

    [Fact]
    public void A_whole_path_into_the_folder_is_refused_too()
    {
        var path = _album.Put("a.jpg", Pictures.Corners(16, 8));
        Assert.Equal("INT043", _album.Fault(path).Code);
    }

    [Theory]
    [InlineData("NUL")]
    [InlineData("photos/con.jpg")]
    [InlineData("Com1 .png")]
    public void A_name_kept_for_devices_is_refused_on_every_system(string name) =>
        Assert.Contains("device", _album.Fault(name).Message.Text, StringComparison.Ordinal);

    [Theory]
    [InlineData("missing.jpg")]
    [InlineData("no/such/folder/a.jpg")]
    [InlineData("nul\0byte.jpg")]
    [InlineData("a.jpg/b.jpg")]
    public void A_file_that_is_not_there_is_said_to_be_missing(string name)
    {
        _album.Put("a.jpg", Pictures.Corners(16, 8));
        Assert.Equal("INT042", _album.Fault(name).Code);
    }

    [Fact]
    public void A_name_longer_than_any_system_allows_is_missing_and_its_message_short()
    {
        var fault = _album.Fault(new string('x', 1_990) + ".jpg");
        Assert.Equal("INT042", fault.Code);
        Assert.InRange(fault.Message.Text.Length, 20, 120);
    }

    [Theory]
    [InlineData("photos/14.jpg")]
    [InlineData("photos\\14.jpg")]
    [InlineData("./photos//14.jpg")]
    public void Either_stroke_divides_folders(string name)
    {
        _album.Put("photos/14.jpg", Pictures.Corners(16, 8));
        Assert.Null(PreparePhoto.From(_album.Path, name).Fault?.Message);
    }

    [Theory]
    [InlineData("Öse & Gurt (2) #1 100%.JPG")]
    [InlineData("綱.png")]
    [InlineData("🪢 ..jpg")]
    [InlineData("-rf --help;$(x) 'y' \"z\".jpg")]
    [InlineData("...jpg")]
    public void Odd_names_are_names(string name)
    {
        _album.Put(name, Pictures.Corners(16, 8));
        Assert.Null(PreparePhoto.From(_album.Path, name).Fault?.Message);
    }

    [Fact]
    public void A_link_out_of_the_folder_is_refused_and_one_within_it_is_followed()
    {
        _album.Put("a.jpg", Pictures.Corners(16, 8));
        File.CreateSymbolicLink(Path.Combine(_album.Path, "in.jpg"), "a.jpg");
        File.CreateSymbolicLink(Path.Combine(_album.Path, "out.jpg"), _album.Outside("other.jpg"));
        File.CreateSymbolicLink(Path.Combine(_album.Path, "twice.jpg"), "out.jpg");
        Directory.CreateSymbolicLink(Path.Combine(_album.Path, "up"), "..");
        File.CreateSymbolicLink(Path.Combine(_album.Path, "dead.jpg"), "nothing.jpg");
        File.CreateSymbolicLink(Path.Combine(_album.Path, "ring.jpg"), "ring.jpg");

        Assert.Null(PreparePhoto.From(_album.Path, "in.jpg").Fault?.Message);
        foreach (var name in (string[])["out.jpg", "twice.jpg", "up/other.jpg"])
            Assert.Equal("INT043", _album.Fault(name).Code);
        foreach (var name in (string[])["dead.jpg", "ring.jpg"])
            Assert.Equal("INT042", _album.Fault(name).Code);
    }

    [Fact]
    public void A_record_in_a_linked_folder_finds_its_photos()
    {
        _album.Put("a.jpg", Pictures.Corners(16, 8));
        Directory.CreateSymbolicLink(_album.Outside("linked"), _album.Path);
        Assert.Null(PreparePhoto.From(_album.Outside("linked"), "a.jpg").Fault?.Message);
    }

    [Fact]
    public void A_folder_whose_name_begins_alike_is_outside()
    {
        Directory.CreateDirectory(_album.Outside("record-2"));
        File.WriteAllBytes(_album.Outside("record-2/a.jpg"), Pictures.Corners(16, 8));
        File.CreateSymbolicLink(Path.Combine(_album.Path, "near.jpg"), "../record-2/a.jpg");
        Assert.Equal("INT043", _album.Fault("near.jpg").Code);
    }

    /// <summary>Opening a pipe waits until somebody writes into it.</summary>
    [Fact]
    public void A_pipe_a_folder_and_an_empty_file_are_never_opened()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "there are no named pipes in folders here");
        using (var mkfifo = Process.Start("mkfifo", Path.Combine(_album.Path, "pipe.jpg")))
            mkfifo.WaitForExit();
        Directory.CreateDirectory(Path.Combine(_album.Path, "folder.jpg"));
        _album.Put("empty.jpg", []);
        foreach (var name in (string[])["pipe.jpg", "folder.jpg", "empty.jpg"])
        {
            var budget = new PhotoBudget();
            Assert.Equal("INT044", Assert.Single(RecordPhotos.Check(AlbumFolder.Record(name), _album.Path, budget)).Code);
            Assert.Equal(0, budget.FilesOpened);
        }
    }
}
