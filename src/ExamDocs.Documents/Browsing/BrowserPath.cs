using System.Runtime.InteropServices;

namespace ExamDocs.Documents.Browsing;

/// <summary>Where the browser is that prints.</summary>
public static class BrowserPath
{
    /// <summary>Environment variable that names another browser; it is used as it stands or refused, never passed over.</summary>
    public const string Variable = "EXAMDOCS_BROWSER";

    // The wrapper scripts in /usr/bin leave orphans behind when a launch fails: the programs themselves come first.
    private static readonly string[] OnLinux =
    [
        "/usr/lib/chromium/chromium-headless-shell",
        "/usr/lib/chromium/chromium",
        "/usr/lib/chromium-browser/chromium-browser",
        "/usr/lib64/chromium-browser/chromium-browser",
        "/usr/lib64/chromium/chromium",
        "/opt/google/chrome/chrome",
        "/opt/microsoft/msedge/msedge",
    ];

    // Below /Applications, or the folder of that name of one user.
    private static readonly string[] OnMacOs =
    [
        "Chromium.app/Contents/MacOS/Chromium",
        "Google Chrome.app/Contents/MacOS/Google Chrome",
        "Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    ];

    // Below the folders for programs, of all users or of one. Edge comes last although it is always there: who installed another chose it.
    private static readonly string[] OnWindows =
    [
        @"Chromium\Application\chrome.exe",
        @"Google\Chrome\Application\chrome.exe",
        @"Microsoft\Edge\Application\msedge.exe",
    ];

    private static readonly string[] WindowsFolders = ["ProgramFiles", "ProgramW6432", "ProgramFiles(x86)", "LOCALAPPDATA"];

    /// <exception cref="BrowserMissing">There is none, or the one named is not there.</exception>
    public static string Find() =>
        Find(Usual(ThisSystem, Environment.GetEnvironmentVariable), Environment.GetEnvironmentVariable(Variable), File.Exists);

    internal static string Find(IEnumerable<string> usual, string? named, Func<string, bool> exists)
    {
        if (!string.IsNullOrWhiteSpace(named))
            return exists(named) ? named : throw new BrowserMissing($"{Variable} names {named}, and there is no such file");
        return usual.FirstOrDefault(exists)
            ?? throw new BrowserMissing(
                "there is no browser to print with: install chromium-headless-shell (or Chromium, Chrome or Edge), or set "
                    + $"{Variable} to one"
            );
    }

    /// <summary>The usual places of one system, the best first.</summary>
    /// <param name="system">The system.</param>
    /// <param name="variable">What an environment variable says; null for nothing.</param>
    internal static IEnumerable<string> Usual(OSPlatform system, Func<string, string?> variable) =>
        system == OSPlatform.Windows ? UsualOnWindows(variable)
        : system == OSPlatform.OSX ? OnMacOs.SelectMany(p => new[] { $"/Applications/{p}", $"{variable("HOME")}/Applications/{p}" })
        : OnLinux;

    private static IEnumerable<string> UsualOnWindows(Func<string, string?> variable) =>
        from program in OnWindows
        from folder in WindowsFolders
        let root = variable(folder)
        where !string.IsNullOrEmpty(root)
        select $@"{root.TrimEnd('\\')}\{program}";

    private static OSPlatform ThisSystem =>
        OperatingSystem.IsWindows() ? OSPlatform.Windows
        : OperatingSystem.IsMacOS() ? OSPlatform.OSX
        : OSPlatform.Linux;
}
