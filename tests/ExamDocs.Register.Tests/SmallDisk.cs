using System.Diagnostics;
using System.Globalization;

namespace ExamDocs.Register.Tests;

/// <summary>A small disk in memory; the test is left out where this machine lets it mount none.</summary>
internal sealed class SmallDisk : IDisposable
{
    private readonly string _folder;

    public SmallDisk(string folder, int kibibytes = 256)
    {
        _folder = Directory.CreateDirectory(folder).FullName;
        if (!OperatingSystem.IsLinux() || Run("mount", "-t", "tmpfs", "-o", Size(kibibytes), "examdocs", _folder) != 0)
            Assert.Skip("No disk may be mounted here: that takes Linux and root.");
    }

    /// <summary>Makes room; what is on it stays.</summary>
    public void GrowTo(int kibibytes) => Assert.Equal(0, Run("mount", "-o", $"remount,{Size(kibibytes)}", _folder));

    public void Dispose() => Run("umount", _folder);

    private static string Size(int kibibytes) => string.Create(CultureInfo.InvariantCulture, $"size={kibibytes}k");

    private static int Run(string program, params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, arguments) { RedirectStandardError = true, UseShellExecute = false }
        );
        process!.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode;
    }
}
