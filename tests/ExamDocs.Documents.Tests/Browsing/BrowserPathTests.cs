using System.Runtime.InteropServices;
using ExamDocs.Documents.Browsing;

namespace ExamDocs.Documents.Tests.Browsing;

/// <summary>An installed browser is found where each system keeps its programs; none is ever fetched.</summary>
public sealed class BrowserPathTests
{
    private static readonly Dictionary<string, string> Windows = new(StringComparer.Ordinal)
    {
        ["ProgramFiles"] = @"D:\Programs",
        ["ProgramFiles(x86)"] = @"D:\Programs (x86)\",
        ["LOCALAPPDATA"] = @"D:\Users\you\AppData\Local",
    };

    // Where these browsers put themselves: for all users below the folders for programs, for one below the local application data.
    [Theory]
    [InlineData(@"D:\Programs (x86)\Microsoft\Edge\Application\msedge.exe")]
    [InlineData(@"D:\Programs\Microsoft\Edge\Application\msedge.exe")]
    [InlineData(@"D:\Programs\Google\Chrome\Application\chrome.exe")]
    [InlineData(@"D:\Users\you\AppData\Local\Google\Chrome\Application\chrome.exe")]
    [InlineData(@"D:\Users\you\AppData\Local\Chromium\Application\chrome.exe")]
    public void On_Windows_an_installed_one_is_found(string installed) => Assert.Equal(installed, Found(OSPlatform.Windows, installed));

    [Fact]
    public void On_Windows_one_that_was_chosen_comes_before_the_one_that_is_always_there() =>
        Assert.Equal(
            @"D:\Users\you\AppData\Local\Google\Chrome\Application\chrome.exe",
            Found(
                OSPlatform.Windows,
                @"D:\Programs (x86)\Microsoft\Edge\Application\msedge.exe",
                @"D:\Users\you\AppData\Local\Google\Chrome\Application\chrome.exe"
            )
        );

    [Theory]
    [InlineData("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome")]
    [InlineData("/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge")]
    [InlineData("/Users/you/Applications/Google Chrome.app/Contents/MacOS/Google Chrome")]
    public void On_macOS_an_installed_one_is_found(string installed) => Assert.Equal(installed, Found(OSPlatform.OSX, installed));

    [Fact]
    public void On_Linux_the_headless_shell_comes_first() =>
        Assert.Equal(
            "/usr/lib/chromium/chromium-headless-shell",
            Found(OSPlatform.Linux, "/opt/google/chrome/chrome", "/usr/lib/chromium/chromium", "/usr/lib/chromium/chromium-headless-shell")
        );

    private static string Found(OSPlatform system, params string[] installed) =>
        BrowserPath.Find(
            BrowserPath.Usual(system, name => name == "HOME" ? "/Users/you" : Windows.GetValueOrDefault(name)),
            named: null,
            installed.Contains
        );
}
