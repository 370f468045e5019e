using System.Diagnostics;
using System.Globalization;
using ExamDocs.Register.Files;

namespace ExamDocs.UseCases.Outputs;

/// <summary>
/// Writes a file whole or not at all. Only <see cref="OutputGuard"/> and <see cref="OwnFile"/> may call it: what has the name already is
/// theirs to judge; and <see cref="TemporaryFolder"/>, which has a folder to itself.
/// </summary>
internal static class WholeFile
{
    private const string Part = ".part";

    /// <summary>Ordinary files lie here, and no devices.</summary>
    private const string MemoryDisk = "/dev/shm/";

    /// <summary>The program's own streams, which the caller may have sent into a file.</summary>
    private static readonly string[] Streams =
    [
        "/dev/stdout",
        "/dev/stderr",
        "/dev/fd/1",
        "/dev/fd/2",
        "/proc/self/fd/1",
        "/proc/self/fd/2",
    ];

    /// <summary>
    /// Whether a path leads to a device, which is written to and never replaced. An open file of another number is none: it leads to
    /// an ordinary file, which somebody may have.
    /// </summary>
    public static bool IsDevice(string full) =>
        Streams.Contains(full, StringComparer.Ordinal)
        || (
            full.StartsWith("/dev/", StringComparison.Ordinal)
            && !full.StartsWith(MemoryDisk, StringComparison.Ordinal)
            && !full.StartsWith("/dev/fd/", StringComparison.Ordinal)
        );

    /// <param name="full">Full path; its folder is made where it is missing.</param>
    /// <param name="make">Makes the file, which is not there yet, at the path that it is given.</param>
    /// <param name="replace">Take the place of what has the name.</param>
    /// <returns>False where something has the name and was not to be replaced; it is as it was.</returns>
    /// <exception cref="IOException">It cannot be written; what was there before still is.</exception>
    public static bool Write(string full, Action<string> make, bool replace)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        RemoveLeftBehind(full);
        var temporary = TemporaryName(full);
        try
        {
            make(temporary);
            if (!replace)
                return ExclusiveMove.Try(temporary, full);
            File.Move(temporary, full, overwrite: true);
            return true;
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    /// <inheritdoc cref="Write(string, Action{string}, bool)"/>
    public static bool Write(string full, ReadOnlyMemory<byte> content, bool replace) => Write(full, path => Put(path, content), replace);

    private static void Put(string path, ReadOnlyMemory<byte> content) => Put(path, stream => stream.Write(content.Span));

    /// <param name="path">Where nothing is yet.</param>
    /// <param name="write">Writes the whole file.</param>
    public static void Put(string path, Action<Stream> write)
    {
        // CreateNew follows no link that somebody may have put there.
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);
        write(stream);
        stream.Flush(flushToDisk: true);
    }

    /// <summary>A name that nobody has, which says whose it is.</summary>
    internal static string TemporaryName(string full) =>
        string.Create(CultureInfo.InvariantCulture, $"{full}.{Environment.ProcessId}-{Path.GetRandomFileName()[..8]}{Part}");

    /// <summary>Takes away what runs that were killed had begun to write; a run that goes on keeps its own.</summary>
    internal static void RemoveLeftBehind(string full)
    {
        foreach (var path in Directory.EnumerateFiles(Path.GetDirectoryName(full)!, $"*{Part}"))
        {
            if (
                path.StartsWith($"{full}.", StringComparison.Ordinal)
                && ProcessOf(path[(full.Length + 1)..]) is { } process
                && !IsRunning(process)
            )
                File.Delete(path);
        }
    }

    /// <param name="ending">What follows the name of the file, for example 1234-abcdefgh.part.</param>
    private static int? ProcessOf(string ending) =>
        ending.IndexOf('-', StringComparison.Ordinal) is > 0 and var dash
        && ending.Length == dash + 1 + 8 + Part.Length
        && int.TryParse(ending.AsSpan(..dash), NumberStyles.None, CultureInfo.InvariantCulture, out var process)
            ? process
            : null;

    private static bool IsRunning(int process)
    {
        try
        {
            using var found = Process.GetProcessById(process);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
