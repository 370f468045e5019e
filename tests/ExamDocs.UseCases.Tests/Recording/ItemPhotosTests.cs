using System.Security.Cryptography;
using System.Text;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Recording;
using SkiaSharp;

namespace ExamDocs.UseCases.Tests.Recording;

/// <summary>A photo is kept as it came, under the sum of its bytes; what is none is refused, and nothing of it is left.</summary>
public sealed class ItemPhotosTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-item-photos-");

    private string Draft => Path.Combine(_folder.FullName, "visit.draft.json");

    private string[] Files => [.. _folder.EnumerateFiles("*", SearchOption.AllDirectories).Select(f => f.Name)];

    public void Dispose() => _folder.Delete(recursive: true);

    public static TheoryData<string, byte[]> NoPhotos =>
        new()
        {
            { "an SVG drawing", [.. "<svg xmlns=\"x\"><script>alert(1)</script></svg>"u8] },
            { "neither a JPEG nor a PNG", [.. "<html><script>alert(1)</script>"u8] },
            { "a PDF document", [.. "%PDF-1.7\n"u8] },
            { "a GIF picture", [.. "GIF89a"u8, 0, 0] },
            { "is empty", [] },
            { "damaged", Picture(40, 30)[..200] },
            { "pixels", Claiming(30_000, 30_000) },
        };

    [Theory]
    [MemberData(nameof(NoPhotos))]
    public void What_is_no_photo_is_refused_in_a_sentence_and_leaves_no_file(string why, byte[] file)
    {
        var (photo, fault) = Keep(file, "<img src=x>.jpg");
        Assert.Null(photo);
        Assert.Contains(why, fault!.Message.Text, StringComparison.Ordinal);
        Assert.Empty(Files);
    }

    [Fact]
    public void A_file_that_is_too_large_is_refused_before_it_is_read()
    {
        using var endless = new MemoryStream();
        var (photo, fault) = ItemPhotos.Keep(Draft, endless, 41L * 1024 * 1024, "a.jpg");
        Assert.Null(photo);
        Assert.Equal("INT045", fault!.Rule.Code);
    }

    [Theory]
    [InlineData("../../../outside.jpg")]
    [InlineData("C:\\windows\\a.jpg")]
    [InlineData("a\0b.html")]
    [InlineData("")]
    public void Its_bytes_alone_name_it_whatever_it_was_called(string name)
    {
        var file = Picture(40, 30);
        var (photo, fault) = Keep(file, name);
        Assert.Null(fault);
        Assert.Equal($"photos/sha256-{Convert.ToHexStringLower(SHA256.HashData(file))}.jpg", photo);
        Assert.Equal(file, File.ReadAllBytes(Path.Combine(_folder.FullName, photo!)));
        Assert.Single(Files);
    }

    [Fact]
    public void Each_answer_has_its_own_and_nothing_is_answered_by_it()
    {
        var draft = RecordDraft.ForNextVisit(null).With("/items/0/id", "C-1").With("/items/0/category", "connector");
        var (one, other) = (Keep(Picture(40, 30), "a").Photo, Keep(Picture(30, 40), "b").Photo);
        draft = ItemPhotos.With(ItemPhotos.With(draft, 0, "cracks", one), 0, "heat", other);
        Assert.Equal(
            (one, other, ""),
            (ItemPhotos.Of(draft, 0, "cracks"), ItemPhotos.Of(draft, 0, "heat"), ItemPhotos.Of(draft, 0, "gate"))
        );
        DraftFile.Write(Draft, draft);
        var read = CheckRecord.Of(Draft, new(2026, 5, 12));
        Assert.DoesNotContain(read.Visit!.Findings, f => f.Code is "INT042" or "INT043" or "INT044");
        Assert.Equal(Core.Records.Outcome.Undetermined, read.Visit.Items.Single().Outcome);
        // Taken off again, the item counts as not examined.
        draft = ItemPhotos.With(ItemPhotos.With(draft, 0, "cracks", null), 0, "heat", null);
        Assert.Empty(draft.Record.Examinations);
    }

    [Theory]
    [InlineData("jpg", SKEncodedImageFormat.Jpeg)]
    [InlineData("png", SKEncodedImageFormat.Png)]
    public void One_that_was_exchanged_afterwards_is_found(string ending, SKEncodedImageFormat format)
    {
        var photo = Keep(Picture(40, 30, format), "a").Photo!;
        Assert.EndsWith(ending, photo, StringComparison.Ordinal);
        File.WriteAllBytes(Path.Combine(_folder.FullName, photo), Picture(50, 30, format));
        var draft = RecordDraft.ForNextVisit(null).With("/items/0/id", "C-1").With("/items/0/category", "connector");
        DraftFile.Write(Draft, ItemPhotos.With(draft, 0, "cracks", photo));
        var found = Assert.Single(CheckRecord.Of(Draft, new(2026, 5, 12)).Visit!.Findings, f => f.Code is "INT090");
        Assert.EndsWith("/photo", found.Path, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../visit.draft.json")]
    [InlineData("visit.draft.json")]
    [InlineData("")]
    [InlineData("*")]
    public void Only_a_photo_of_the_folder_is_found_by_its_name(string name)
    {
        Keep(Picture(40, 30), "a");
        File.WriteAllText(Draft, "{}", Encoding.UTF8);
        Assert.Null(ItemPhotos.Find(Draft, name));
    }

    private (string? Photo, Intake.Photos.PhotoFault? Fault) Keep(byte[] file, string name)
    {
        using var stream = new MemoryStream(file);
        return ItemPhotos.Keep(Draft, stream, file.Length, name);
    }

    private static byte[] Picture(int width, int height, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg)
    {
        using var bitmap = new SKBitmap(width, height);
        bitmap.Erase(SKColors.Orange);
        using var data = bitmap.Encode(format, 90);
        return data.ToArray();
    }

    /// <summary>A small picture whose header claims another size.</summary>
    private static byte[] Claiming(int width, int height)
    {
        var file = Picture(40, 30);
        // The frame header, ISO/IEC 10918-1 B.2.2: its mark, length and precision stand before the height and the width.
        var frame = file.AsSpan().IndexOf([(byte)0xFF, (byte)0xC0]);
        (file[frame + 5], file[frame + 6]) = ((byte)(height >> 8), (byte)height);
        (file[frame + 7], file[frame + 8]) = ((byte)(width >> 8), (byte)width);
        return file;
    }
}
