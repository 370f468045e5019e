namespace ExamDocs.Documents.Browsing;

/// <summary>Where the browser is that prints.</summary>
public static class BrowserPath
{
    /// <summary>Environment variable that names another browser; it is used as it stands or refused, never passed over.</summary>
    public const string Variable = "EXAMDOCS_BROWSER";

    // The wrapper scripts in /usr/bin leave orphans behind when a launch fails: the programs themselves come first.
    private static readonly string[] Known =
    [
        "/usr/lib/chromium/chromium-headless-shell",
        "/usr/lib/chromium/chromium",
        "/usr/lib/chromium-browser/chromium-browser",
        "/opt/google/chrome/chrome",
        "/opt/microsoft/msedge/msedge",
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe",
        @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
        @"C:\Program Files\Microsoft\Edge\Application\msedge.exe",
    ];

    /// <exception cref="BrowserMissing">There is none, or the one named is not there.</exception>
    public static string Find() => Find(Environment.GetEnvironmentVariable(Variable), File.Exists);

    internal static string Find(string? named, Func<string, bool> exists)
    {
        if (!string.IsNullOrWhiteSpace(named))
            return exists(named) ? named : throw new BrowserMissing($"{Variable} names {named}, and there is no such file");
        return Known.FirstOrDefault(exists)
            ?? throw new BrowserMissing(
                "there is no browser to print with: install chromium-headless-shell (or Chromium, Chrome or Edge), or set "
                    + $"{Variable} to one"
            );
    }
}
