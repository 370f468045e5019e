namespace ExamDocs.Workbench.Tests;

/// <summary>What the tests of pages ask of every page would be seen where it does not hold.</summary>
public sealed class SoundPageTests(OpenedBrowser browser)
{
    [Fact]
    public async Task A_picture_without_words_and_pale_letters_are_found()
    {
        var page = await browser.OpenAsync(1280);
        await page.SetContentAsync("<html lang=en><title>Kit</title><main><h1>Kit</h1><img src=x><p style='color:#ccc'>pale</p></main>");
        var found = await SoundPage.ViolationsAsync(page, "kit");
        Assert.Contains("kit: image-alt: ", found, StringComparison.Ordinal);
        Assert.Contains("kit: color-contrast: ", found, StringComparison.Ordinal);
        await page.SetContentAsync("<html lang=en><title>Kit</title><main><h1>Kit</h1><img src=x alt=sling><p>black</p></main>");
        Assert.Equal("", await SoundPage.ViolationsAsync(page, "kit"));
    }
}
