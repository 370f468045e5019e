using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using ClosedXML.Excel;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Company.Packing;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using UglyToad.PdfPig;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>The two files of a pack, looked at with other people's programs.</summary>
public sealed class BuildPackTests : IDisposable
{
    private const string Hostile = "=HYPERLINK(\"x\") <script>alert(1)</script> ../../etc \u05D0\u05D1\u05D2 & \"q\"";

    private readonly PackStory _story = new PackStory().InOrder();

    public void Dispose() => _story.Dispose();

    [Fact]
    public async Task The_zip_is_a_bag_that_sha256sum_finds_whole_with_each_document_as_issued()
    {
        var result = await BuildAsync();
        Assert.Equal((null, null, true), (result.Refused, result.Failure, result.HasCopy));
        Assert.Empty(result.Contents!.Gaps);
        var zip = await File.ReadAllBytesAsync(_story.At("pack.zip"), TestContext.Current.CancellationToken);
        Assert.Empty(Bag.Faults(zip));
        Assert.Equal(PackStory.Page("R-2026-000001"), Bag.Files(zip)["data/documents/R-2026-000001.pdf"]);
        var folder = Unpacked();
        Assert.Equal(0, Run("sha256sum", folder, "-c", "--strict", "manifest-sha256.txt").Code);
        Assert.Equal(0, Run("sha256sum", folder, "-c", "--strict", "tagmanifest-sha256.txt").Code);
    }

    /// <summary>The program that the text hands out is run as it stands there.</summary>
    [Fact]
    public async Task The_text_s_own_program_finds_each_document_in_the_log_and_an_altered_one_not()
    {
        await BuildAsync();
        var folder = Unpacked();
        var text = await File.ReadAllTextAsync(Path.Combine(folder, "data", "how-to-verify.txt"), TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(
            Path.Combine(folder, "check.py"),
            text[text.IndexOf("import base64", StringComparison.Ordinal)..],
            TestContext.Current.CancellationToken
        );
        Assert.Equal("R-2026-000001 ok\n", Run("python3", folder, "check.py").Output);
        var document = Path.Combine(folder, "data", "documents", "R-2026-000001.pdf");
        var bytes = await File.ReadAllBytesAsync(document, TestContext.Current.CancellationToken);
        bytes[^1] ^= 1;
        await File.WriteAllBytesAsync(document, bytes, TestContext.Current.CancellationToken);
        Assert.Equal("R-2026-000001 WRONG\n", Run("python3", folder, "check.py").Output);
        // Somebody puts a document of his own beside it, and then into the list as well.
        const string Added = "data/documents/R-2026-000009.pdf";
        await File.WriteAllBytesAsync(Path.Combine(folder, Added), bytes, TestContext.Current.CancellationToken);
        Assert.EndsWith($"{Added} IS IN NO LIST\n", Run("python3", folder, "check.py").Output, StringComparison.Ordinal);
        await File.AppendAllTextAsync(
            Path.Combine(folder, "manifest-sha256.txt"),
            $"{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes))}  {Added}\n",
            TestContext.Current.CancellationToken
        );
        Assert.EndsWith($"{Added} IS NOT PROVED\n", Run("python3", folder, "check.py").Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_link_and_every_page_number_of_the_reading_copy_leads_to_its_document()
    {
        var visit = _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1"), "2026-05-20");
        for (var n = 0; n < 40; n++)
            _story.Issue(visit, "2026-05-20", n % 2 == 0 ? "report" : "notice", ["C-1"], null);
        var result = await BuildAsync(ask: q => q with { AsOf = PackStory.Day("2026-06-02") });
        var file = _story.At("pack-reading-copy.pdf");
        Assert.Null(Pdf.Objection(file));
        using var read = PdfDocument.Open(file);
        var front = read.NumberOfPages - result.Contents!.Documents.Sum(d => d.Pages) - result.Contents.Evidence.Sum(e => e.Pages ?? 0);
        var links = PdfLinks.Of(file);
        var led = 0;
        foreach (var document in result.Contents.Documents)
        {
            // The page bears the document's number, and the note at its top that of the index.
            var page = Enumerable.Range(1, read.NumberOfPages).Where(p => read.GetPage(p).Text.Trim() == document.Number).ToList();
            Assert.Single(page);
            foreach (var link in links.Where(l => l.Text.StartsWith(document.Number, StringComparison.Ordinal)))
            {
                Assert.Equal(page[0], link.To);
                led++;
            }
            Assert.Contains($"{document.Number}, p. {document.Page}", Pdf.Text(file), StringComparison.Ordinal);
        }
        Assert.InRange(led, result.Contents.Documents.Count * 2, int.MaxValue);
        Assert.True(front >= 2);
        Assert.Contains("Ada Fenn", Pdf.Text(file), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_build_of_the_day_has_the_same_bytes()
    {
        await BuildAsync("one/pack.zip");
        await BuildAsync("two/pack.zip");
        foreach (var file in new[] { "pack.zip", "pack-reading-copy.pdf" })
            Assert.Equal(await BytesAsync($"one/{file}"), await BytesAsync($"two/{file}"));
    }

    [Fact]
    public async Task What_was_typed_stays_text_in_every_file_and_makes_no_path()
    {
        var json = JsonNode.Parse(Visit("V-2", "2026-05-20").Harness("H-2", "A2").Json)!;
        var (item, person) = (json["items"]![0]!, json["people"]![0]!);
        (item["description"], item["ownersMark"], item["maker"], item["model"]) = (Hostile, Hostile, Hostile, Hostile);
        (item["id"], json["examinations"]![0]!["item"]) = ("=H-2 <b>../x", "=H-2 <b>../x");
        (person["name"], person["qualifications"], json["visit"]!["reference"]) = (Hostile, Hostile, Hostile);
        json["visit"]!["premises"]!["name"] = Hostile;
        foreach (var limits in json["limits"]!.AsArray())
            (limits!["maker"], limits["model"]) = (Hostile, Hostile);
        var visit = _story.ImportJson(json.ToJsonString(), "2026-05-20");
        _story.Report(visit, "2026-05-20", "=H-2 <b>../x");
        _story.Enclose("<script>alert(2) & co.pdf");

        var result = await BuildAsync();

        Assert.True(result.HasCopy, result.Failure);
        Assert.Contains(result.Contents!.Items, i => i.Item.Maker == Hostile);
        var files = Bag.Files(await BytesAsync("pack.zip"));
        Assert.Empty(Bag.Faults(await BytesAsync("pack.zip")));
        var page = Encoding.UTF8.GetString(files["data/index.html"]);
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>../x", page, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;alert(1)", page, StringComparison.Ordinal);
        using var workbook = new XLWorkbook(new MemoryStream(files["data/register.xlsx"]));
        Assert.All(workbook.Worksheets, sheet => Assert.True(Assert.Single(sheet.Tables).ShowAutoFilter));
        Assert.DoesNotContain(workbook.Worksheets.SelectMany(s => s.CellsUsed()), cell => cell.HasFormula);
        Assert.Contains(workbook.Worksheet("Register").CellsUsed(), cell => cell.GetString() == Hostile);
        Assert.Equal(
            Hostile,
            (string?)
                JsonNode.Parse(files["data/register.json"])!["items"]!.AsArray().Single(i => (string?)i!["id"] is "=H-2 <b>../x")!["maker"]
        );
        Assert.Null(Pdf.Objection(_story.At("pack-reading-copy.pdf")));
    }

    [Fact]
    public async Task Every_address_of_the_index_is_a_file_of_the_pack_and_nothing_is_fetched()
    {
        _story.Enclose("notes #1 50% & more?.pdf");
        await BuildAsync();
        var files = Bag.Files(await BytesAsync("pack.zip"));
        var page = new AngleSharp.Html.Parser.HtmlParser().ParseDocument(Encoding.UTF8.GetString(files["data/index.html"]));
        Assert.Empty(page.QuerySelectorAll("script, link, img, iframe, object, form, base, [onclick], [onload]"));
        Assert.StartsWith("default-src 'none'", page.QuerySelector("meta[http-equiv]")!.GetAttribute("content"), StringComparison.Ordinal);
        var addresses = page.QuerySelectorAll("a").Select(a => a.GetAttribute("href")!).ToList();
        foreach (var address in addresses.Where(a => !a.StartsWith('#')))
            Assert.Contains($"data/{Uri.UnescapeDataString(address)}", files.Keys);
        foreach (var place in addresses.Where(a => a.StartsWith('#')))
            Assert.NotNull(page.QuerySelector(place));
        foreach (var file in files.Keys.Where(f => f.StartsWith("data/", StringComparison.Ordinal) && f is not "data/index.html"))
            Assert.Contains(addresses, a => $"data/{Uri.UnescapeDataString(a)}" == file);
        Assert.True(
            page.QuerySelector("#gaps")!
                .CompareDocumentPosition(page.QuerySelector("#register")!)
                .HasFlag(AngleSharp.Dom.DocumentPositions.Following)
        );
    }

    [Theory]
    [InlineData("de", "Prüfmappe", "Lücken")]
    [InlineData("fr", "Dossier d’audit", "Lacunes")]
    public async Task The_pack_speaks_the_language_asked_for(string tag, string title, string gaps)
    {
        File.Delete(Path.Combine(_story.Evidence, "Model harness declaration.pdf"));
        var result = await BuildAsync(ask: q => q with { Language = Language.Find(tag)! });
        Assert.True(result.HasCopy);
        var text = Pdf.Text(_story.At("pack-reading-copy.pdf"));
        Assert.Contains(title, text, StringComparison.Ordinal);
        Assert.Contains(gaps, text, StringComparison.Ordinal);
        var files = Bag.Files(await BytesAsync("pack.zip"));
        Assert.Contains($"<html lang=\"{tag}\"", Encoding.UTF8.GetString(files["data/index.html"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Employers_to_choose_from_are_those_that_have_kit_and_not_whoever_hires_it_out()
    {
        _story.Import(new StoryVisit("V-8", "2026-05-12", "BIRCH LANE").Harness("H-8", "S800"), "2026-05-12");
        _story.Import(
            new StoryVisit("V-9", "2026-05-13", "Birch Lane Ltd").HiredFrom("Larch Hire Ltd").Harness("H-9", "S900"),
            "2026-05-13"
        );
        Assert.Equal([PackStory.Employer, "Birch Lane Ltd"], BuildPack.Employers(_story.Register, new LocalDate(2026, 5, 14)));
    }

    [Theory]
    [InlineData("pack.zip")]
    [InlineData("pack-reading-copy.pdf")]
    public async Task A_file_that_is_there_is_not_written_over(string taken)
    {
        await File.WriteAllTextAsync(_story.At(taken), "mine", TestContext.Current.CancellationToken);
        await Assert.ThrowsAsync<OutputRefusedException>(() => BuildAsync());
        Assert.Equal("mine", await File.ReadAllTextAsync(_story.At(taken), TestContext.Current.CancellationToken));
        Assert.Equal([taken], Directory.EnumerateFiles(_story.Folder, "pack*").Select(f => Path.GetFileName(f)));
    }

    [Fact]
    public async Task Cancelled_it_leaves_nothing_behind()
    {
        for (var stop = 1; stop <= 5; stop++)
        {
            using var source = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
            var request = Request("pack.zip") with
            {
                Progress = progress =>
                {
                    if (progress.Stage is RunStage.Writing && progress.Done == stop)
                        source.Cancel();
                },
            };
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => BuildPack.RunAsync(request, source.Token));
            Assert.Empty(Directory.EnumerateFiles(_story.Folder, "pack*"));
        }
    }

    [Fact]
    public async Task A_register_that_was_altered_gives_no_pack()
    {
        Registered.Tampering.Alter(_story.Register, "UPDATE outcome SET outcome = 'fit-until'");
        await Assert.ThrowsAsync<ExamDocs.Register.Model.RegisterAlteredException>(() => BuildAsync());
        Assert.Empty(Directory.EnumerateFiles(_story.Folder, "pack*"));
    }

    private PackRequest Request(
        string name,
        Func<ExamDocs.UseCases.Company.Packing.PackQuestion, ExamDocs.UseCases.Company.Packing.PackQuestion>? ask = null
    )
    {
        var asked = PackStory.Asked(ask: ask);
        return new PackRequest(_story.Register, asked, _story.At(name))
        {
            EvidenceFolder = _story.Evidence,
            Style = new PrintStyle { Language = asked.Language },
            Browser = OpenBrowser.Instance,
        };
    }

    private Task<PackResult> BuildAsync(
        string name = "pack.zip",
        Func<ExamDocs.UseCases.Company.Packing.PackQuestion, ExamDocs.UseCases.Company.Packing.PackQuestion>? ask = null
    ) => BuildPack.RunAsync(Request(name, ask), TestContext.Current.CancellationToken);

    private Task<byte[]> BytesAsync(string name) => File.ReadAllBytesAsync(_story.At(name), TestContext.Current.CancellationToken);

    private string Unpacked()
    {
        System.IO.Compression.ZipFile.ExtractToDirectory(_story.At("pack.zip"), _story.At("unpacked"));
        return _story.At("unpacked/pack");
    }

    private static (int Code, string Output) Run(string program, string folder, params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, arguments)
            {
                WorkingDirectory = folder,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.Result);
    }
}
