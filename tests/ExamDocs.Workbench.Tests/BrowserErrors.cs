using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>What went wrong in a page, as the browser tells it.</summary>
internal static class BrowserErrors
{
    public static List<string> Of(IPage page)
    {
        var errors = new List<string>();
        page.PageError += (_, error) => errors.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error")
                errors.Add(message.Text);
        };
        return errors;
    }
}
