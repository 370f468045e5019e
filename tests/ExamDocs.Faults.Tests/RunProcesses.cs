namespace ExamDocs.Faults.Tests;

/// <summary>The processes that belong to the runs in one folder: those that have it as theirs, and the browsers they started.</summary>
internal static class RunProcesses
{
    /// <summary>Waits until none is left; a browser takes a moment to notice that whoever started it is gone.</summary>
    /// <returns>What is still there after half a minute, each by its command line.</returns>
    public static async Task<IReadOnlyList<string>> LeftAsync(string folder, CancellationToken cancellation)
    {
        var left = In(folder);
        for (var waited = 0; left.Count > 0 && waited < 300; waited++)
        {
            await Task.Delay(100, cancellation);
            left = In(folder);
        }
        return left;
    }

    /// <summary>Command lines of all processes that work in the folder or name it; empty where there is no /proc.</summary>
    public static IReadOnlyList<string> In(string folder) =>
        !Directory.Exists("/proc")
            ? []
            :
            [
                .. Directory
                    .EnumerateDirectories("/proc")
                    .Where(p => char.IsAsciiDigit(Path.GetFileName(p)[0]))
                    .Select(p => (Line: CommandLine(p), Place: WorksIn(p)))
                    .Where(p =>
                        p.Line.Contains(folder, StringComparison.Ordinal) || string.Equals(p.Place, folder, StringComparison.Ordinal)
                    )
                    .Where(p => p.Line.Length > 0)
                    .Select(p => p.Line),
            ];

    private static string CommandLine(string process)
    {
        try
        {
            return File.ReadAllText(Path.Combine(process, "cmdline")).Replace('\0', ' ');
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }

    private static string? WorksIn(string process)
    {
        try
        {
            return new DirectoryInfo(Path.Combine(process, "cwd")).LinkTarget;
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
