using System.Diagnostics;
using System.Security.Cryptography;
using ExamDocs.UseCases.Reading;
using Microsoft.Playwright;
using SkiaSharp;

namespace ExamDocs.Workbench.Tests;

/// <summary>Photos are added, seen and taken off while an item is recorded, and are printed in the report.</summary>
public sealed class PhotoTests(OpenedBrowser browser) : IClassFixture<OpenedBrowser>
{
    [Fact]
    public async Task A_photo_is_added_seen_taken_off_and_printed()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await OpenItemAsync(open, 1280);
        var errors = BrowserErrors.Of(page);
        var cracks = page.Locator("#criterion-cracks");
        await page.Locator("#criterion-cracks .answer.defect").ClickAsync();
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");

        // What is no photo is refused beside the answer, and what stands is not touched.
        foreach (
            var (name, bytes) in new[] { ("a.svg", "<svg onload='document.title=1'/>"u8.ToArray()), ("b.jpg", "<script>"u8.ToArray()) }
        )
        {
            await ChooseAsync(page, "cracks", bytes, name);
            await Assertions.Expect(cracks.Locator(".refused")).ToContainTextAsync($"Not taken: the photo '{name}' is");
            Assert.Equal(0, await page.Locator("img").CountAsync());
        }
        errors.RemoveAll(e => e.Contains("422", StringComparison.Ordinal));

        var photo = Picture(1200, 900, SKColors.OrangeRed);
        await ChooseAsync(page, "cracks", photo, "../../<img src=x>.jpg");
        var shown = cracks.Locator("img");
        await Assertions.Expect(shown).ToHaveCountAsync(1);
        await shown.ScrollIntoViewIfNeededAsync();
        await page.WaitForFunctionAsync("document.querySelector('#criterion-cracks img').naturalWidth === 1200");
        await ChooseAsync(page, "heat", Picture(60, 40, SKColors.Blue, SKEncodedImageFormat.Png), "heat.png");
        await Assertions.Expect(page.Locator("#criterion-heat img")).ToHaveCountAsync(1);
        await ChooseAsync(page, "corrosion", Picture(30, 40, SKColors.Green), "corrosion.jpg");
        await Assertions.Expect(page.Locator("#criterion-corrosion img")).ToHaveCountAsync(1);
        await page.Locator("#criterion-corrosion .picture button").ClickAsync();
        await Assertions.Expect(page.Locator("#criterion-corrosion img")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("#criterion-cracks .answer.defect input")).ToBeCheckedAsync();
        await SoundPage.RequireBothWaysAsync(page, "item-photos");

        var sum = Convert.ToHexStringLower(SHA256.HashData(photo));
        var record = ReadInput.From(LastVisit.Draft(open)).Record!;
        var named = record.Examinations.Single(e => e.ExaminedOn is null).Observations.Where(o => o.Photo is not null).ToList();
        Assert.Equal(["cracks", "heat"], named.Select(o => o.Criterion), StringComparer.Ordinal);
        Assert.Equal($"photos/sha256-{sum}.jpg", named[0].Photo);
        var answer = await page.Context.APIRequest.GetAsync(open.Address + await shown.GetAttributeAsync("src"));
        Assert.Equal(("image/jpeg", "nosniff"), (answer.Headers["content-type"], answer.Headers["x-content-type-options"]));
        Assert.Equal(photo, await answer.BodyAsync());

        await page.Locator("#criterion-cracks").GetByLabel("Note").FillAsync("12 mm long");
        await page.Locator("#criterion-heat .answer.clear").ClickAsync();
        await page.Locator("#conclusion .answer.withdraw").ClickAsync();
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");
        var visit = page.Url[..page.Url.IndexOf("/item", StringComparison.Ordinal)];
        await page.GotoAsync(visit);
        await page.GetByRole(AriaRole.Button, new() { Name = "Issue the documents" }).ClickAsync();
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("Done.", new() { Timeout = 120_000 });
        var notice = Directory.EnumerateFiles(open.Desk, "N-*.pdf", SearchOption.AllDirectories).Single();
        Assert.Contains("Photo 1, Cracks, defect: 12 mm long", Poppler("pdftotext", "-layout", notice, "-"), StringComparison.Ordinal);
        Assert.Contains("image", Poppler("pdfimages", "-list", notice), StringComparison.Ordinal);
        Assert.Empty(errors);
    }

    [Fact]
    public async Task Without_a_script_the_buttons_send_it_with_all_that_was_typed()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await OpenItemAsync(open, 1280, isDark: false, hasScript: false);
        await page.Locator("#criterion-corrosion .answer.noted").ClickAsync();
        await page.Locator("#note-corrosion").FillAsync("a scratch");
        await ChooseAsync(page, "corrosion", Picture(60, 40, SKColors.Blue), "a.jpg");
        await ChooseAsync(page, "heat", "GIF89a"u8.ToArray(), "b.gif");
        await page.Locator(".go button[value=next]").ClickAsync();
        await Assertions.Expect(page.Locator("#criterion-heat .refused")).ToContainTextAsync("a GIF picture");
        await Assertions.Expect(page.Locator("#criterion-corrosion img")).ToHaveCountAsync(1);
        Assert.Equal("a scratch", await page.Locator("#note-corrosion").InputValueAsync());
    }

    [Fact]
    public async Task A_page_that_is_out_of_date_replaces_no_photo()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var one = await OpenItemAsync(open, 1280, isDark: false);
        var other = await one.Context.NewPageAsync();
        await other.GotoAsync(one.Url);
        await ChooseAsync(one, "cracks", Picture(60, 40, SKColors.Blue), "a.jpg");
        await Assertions.Expect(one.Locator("#criterion-cracks img")).ToHaveCountAsync(1);
        await ChooseAsync(other, "cracks", Picture(60, 40, SKColors.Red), "b.jpg");
        await Assertions.Expect(other.Locator("#criterion-cracks .refused")).ToContainTextAsync("Nothing was replaced");
        Assert.Equal(
            await one.Locator("#criterion-cracks img").GetAttributeAsync("src"),
            await other.Locator("#criterion-cracks img").GetAttributeAsync("src")
        );
    }

    private async Task<IPage> OpenItemAsync(OpenedWorkbench open, int width, bool isDark = false, bool hasScript = true)
    {
        LastVisit.Remember(open);
        var page = await browser.OpenAsync(width, isDark, hasScript);
        await LastVisit.StartNextAsync(open, page);
        await page.Locator($".items a:text-is('{LastVisit.Connector}')").ClickAsync();
        await page.ArriveAsync("**/item/*");
        return page;
    }

    private static Task ChooseAsync(IPage page, string criterion, byte[] bytes, string name) =>
        page.Locator($"#add-photo-{criterion}")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = name,
                    MimeType = "image/jpeg",
                    Buffer = bytes,
                }
            );

    private static byte[] Picture(int width, int height, SKColor colour, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg)
    {
        using var bitmap = new SKBitmap(width, height);
        bitmap.Erase(colour);
        using var data = bitmap.Encode(format, 90);
        return data.ToArray();
    }

    private static string Poppler(string program, params string[] arguments)
    {
        using var run = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        var said = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return said;
    }
}
