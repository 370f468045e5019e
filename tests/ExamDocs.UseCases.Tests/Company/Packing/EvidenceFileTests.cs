using ExamDocs.UseCases.Company.Packing;
using SkiaSharp;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>What a user encloses is taken as it is, under a name that every system takes, or left out and named.</summary>
public sealed class EvidenceFileTests : IDisposable
{
    private readonly PackStory _story = new();

    public void Dispose() => _story.Dispose();

    [Fact]
    public void Pdfs_and_pictures_are_taken_whatever_their_names_say_and_end_as_what_they_are()
    {
        _story.Enclose("certificate.jpg");
        _story.Enclose("picture.pdf", Png());
        _story.Enclose("notes.pdf", "hello"u8.ToArray());
        _story.Enclose("page.html", [.. PackStory.Page("a page"), .. "<script>alert(1)</script>"u8]);
        _story.Enclose("empty.pdf", []);
        _story.Enclose(".hidden.pdf");
        var (files, leftOut, refused) = EvidenceFolder.Read(_story.Evidence);
        Assert.Null(refused);
        Assert.Equal(
            ["certificate.pdf 1", "page.pdf 1", "picture.png 1"],
            files.Select(f => FormattableString.Invariant($"{f.Name} {f.Pages}"))
        );
        Assert.Equal(
            ["empty.pdf is empty or larger than 64 MiB, and was left out", "notes.pdf is no PDF, JPEG or PNG, and was left out"],
            leftOut.Select(m => m.Text)
        );
    }

    [Fact]
    public void A_damaged_pdf_is_enclosed_and_has_no_pages()
    {
        _story.Enclose("broken.pdf", "%PDF-1.7 and no more"u8.ToArray());
        Assert.Null(Assert.Single(EvidenceFolder.Read(_story.Evidence).Files).Pages);
    }

    [Theory]
    [InlineData("50% \u202Egpj.pdf")]
    [InlineData("a\nb.pdf")]
    [InlineData("<img src=x onerror=alert(1)>.pdf")]
    [InlineData("CON.pdf")]
    [InlineData("=1+1.pdf")]
    [InlineData("back\\slash.pdf")]
    public void A_name_that_some_system_refuses_or_misreads_is_made_plain(string name)
    {
        _story.Enclose(name);
        var file = Assert.Single(EvidenceFolder.Read(_story.Evidence).Files);
        Assert.DoesNotContain(file.Name, c => c is '%' or '\n' or '\u202E' or '<' or '>' or '\\' or ':' or '/');
        Assert.False(file.Name.StartsWith("CON", StringComparison.Ordinal));
        Assert.EndsWith(".pdf", file.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_that_one_system_takes_for_one_differ()
    {
        _story.Enclose("One.pdf");
        _story.Enclose("one.PDF");
        var names = EvidenceFolder.Read(_story.Evidence).Files.Select(f => f.Name.ToUpperInvariant()).ToList();
        Assert.Equal(2, names.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void A_file_changed_meanwhile_is_not_packed_under_its_old_sum()
    {
        _story.Enclose("a.pdf");
        var file = Assert.Single(EvidenceFolder.Read(_story.Evidence).Files);
        _story.Enclose("a.pdf", PackStory.Page("other"));
        Assert.Throws<IOException>(file.Read);
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_left_out()
    {
        File.CreateSymbolicLink(Path.Combine(_story.Evidence, "gone.pdf"), _story.At("nowhere.pdf"));
        var (files, leftOut, _) = EvidenceFolder.Read(_story.Evidence);
        Assert.Empty(files);
        Assert.Single(leftOut);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_refused() => Assert.NotNull(EvidenceFolder.Read(_story.At("nowhere")).Refused);

    private static byte[] Png()
    {
        using var picture = new SKBitmap(30, 20);
        using var png = picture.Encode(SKEncodedImageFormat.Png, 100);
        return png.ToArray();
    }
}
