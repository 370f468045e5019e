using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using ExamDocs.Intake.Yard;

namespace ExamDocs.Intake.Tests.Yard;

/// <summary>The archive of the form for the yard is unpacked into its folder, and no other archive is.</summary>
public sealed class YardArchiveTests : IDisposable
{
    private static readonly byte[] Picture = [0xFF, 0xD8, 0xFF, 0xD9];
    private static readonly string Photo = $"photos/sha256-{Convert.ToHexStringLower(SHA256.HashData(Picture))}.jpg";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("archive-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void The_record_gets_the_name_it_is_given_and_its_photos_lie_beside_it()
    {
        using var archive = Zip(("Y-1.json", "{}"u8.ToArray()), ("photos/", []), (Photo, Picture));
        Assert.Null(YardArchive.WhyNot(archive));
        archive.Position = 0;
        YardArchive.Unpack(archive, Path.Combine(_folder.FullName, "visit.json"));
        Assert.Equal("{}", File.ReadAllText(Path.Combine(_folder.FullName, "visit.json")));
        Assert.Equal(Picture, File.ReadAllBytes(Path.Combine(_folder.FullName, Photo)));
        Assert.Equal(2, Files.Length);
    }

    [Theory]
    [InlineData("../Y-1.json")]
    [InlineData("..\\Y-1.json")]
    [InlineData("/Y-1.json")]
    [InlineData("C:\\Y-1.json")]
    [InlineData("a/Y-1.json")]
    [InlineData("Y-2.json")]
    [InlineData("Y-1.json")]
    [InlineData("y-1.JSON")]
    [InlineData("notes.txt")]
    [InlineData("photos/../../x.jpg")]
    [InlineData("photos/picture.jpg")]
    [InlineData("photos/NUL")]
    [InlineData("photos/a.svg")]
    [InlineData("photos/a\0.jpg")]
    [InlineData("photos/sha256-0123456789012345678901234567890123456789012345678901234567890123.jpg\n")]
    [InlineData("photos/sha256-0123456789012345678901234567890123456789012345678901234567890123.jpg/x")]
    public void A_file_of_another_name_spoils_the_whole(string name)
    {
        using var archive = Zip(("Y-1.json", "{}"u8.ToArray()), (name, "x"u8.ToArray()));
        RequireRefused(archive, "not as the form for the yard saves it");
    }

    [Fact]
    public void Without_a_record_it_is_not_taken()
    {
        using var archive = Zip((Photo, Picture));
        RequireRefused(archive, "there must be one record");
    }

    [Fact]
    public void What_unpacks_to_too_much_is_refused_before_it_is_unpacked()
    {
        using var archive = Zip(("Y-1.json", "{}"u8.ToArray()), (Photo, new byte[41 * 1024 * 1024]));
        Assert.InRange(archive.Length, 1, 100_000);
        RequireRefused(archive, "unpacks to more");
    }

    [Fact]
    public void A_size_that_is_understated_does_not_let_more_through()
    {
        var bytes = Zip(("Y-1.json", "{}"u8.ToArray()), (Photo, new byte[1024 * 1024])).ToArray();
        // Both headers of the photo say 4 bytes.
        for (var at = 0; (at = bytes.AsSpan(at).IndexOf(BitConverter.GetBytes(1024 * 1024)) is >= 0 and var n ? at + n : -1) >= 0; at += 4)
            BitConverter.GetBytes(4).CopyTo(bytes, at);
        using var archive = new MemoryStream(bytes);
        YardArchive.Unpack(archive, Path.Combine(_folder.FullName, "visit.json"));
        Assert.Equal(4, new FileInfo(Path.Combine(_folder.FullName, Photo)).Length);
    }

    [Theory]
    [InlineData("")]
    [InlineData("PK\u0003\u0004 and no more")]
    [InlineData("{}")]
    public void What_is_no_archive_is_said_to_be_none(string content)
    {
        using var archive = new MemoryStream(Encoding.Latin1.GetBytes(content));
        RequireRefused(archive, "no archive");
    }

    private string[] Files => Directory.GetFiles(_folder.FullName, "*", SearchOption.AllDirectories);

    private void RequireRefused(MemoryStream archive, string why)
    {
        archive.Position = 0;
        Assert.Contains(why, YardArchive.WhyNot(archive), StringComparison.Ordinal);
        archive.Position = 0;
        Assert.Throws<InvalidDataException>(() => YardArchive.Unpack(archive, Path.Combine(_folder.FullName, "visit.json")));
        Assert.Empty(Files);
    }

    private static MemoryStream Zip(params (string Name, byte[] Content)[] files)
    {
        var archive = new MemoryStream();
        using (var zip = new ZipArchive(archive, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in files)
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(content);
            }
        }
        archive.Position = 0;
        return archive;
    }
}
