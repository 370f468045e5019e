using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>
/// What somebody does on a page, counted. An action is one key that answers or moves on, one tap, or one value typed into the field
/// that is ready for it, whatever number of digits it has.
/// </summary>
internal sealed class CountedActions(IPage page)
{
    public int Count { get; private set; }

    public async Task KeyAsync(string key)
    {
        Count++;
        await page.Keyboard.PressAsync(key);
    }

    public async Task TypeAsync(string value)
    {
        Count++;
        await page.Keyboard.TypeAsync(value);
    }

    public async Task TapAsync(string what)
    {
        Count++;
        await page.Locator(what).ClickAsync();
    }
}
