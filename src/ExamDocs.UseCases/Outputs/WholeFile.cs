using System.Diagnostics;
using System.Globalization;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Writes a file that can be made again at any time: whole or not at all, in place of the one before.</summary>
public static class WholeFile
{
    private const string Part = ".part";

    /// <summary>Ordinary files lie here, and no devices.</summary>
    private const string MemoryDisk = "/dev/shm/";

    /// <exception cref="IOException">It cannot be written; the file before is still there.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        var full = Path.GetFullPath(path);
        if (full.StartsWith("/dev/", StringComparison.Ordinal) && !full.StartsWith(MemoryDisk, StringComparison.Ordinal))
        {
            // A device is written to; moving a file onto it would take the device's place.
            File.WriteAllBytes(full, content);
            return;
        }
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        RemoveLeftBehind(full);
        var temporary = $"{full}.{Environment.ProcessId.ToString(CultureInfo.InvariantCulture)}{Part}";
        try
        {
            using (var stream = File.Create(temporary))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }
            File.Move(temporary, full, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    /// <summary>Takes away what runs that were killed had begun to write; a run that goes on keeps its own.</summary>
    private static void RemoveLeftBehind(string full)
    {
        var start = full.Length + 1;
        foreach (var path in Directory.EnumerateFiles(Path.GetDirectoryName(full)!, $"*{Part}"))
        {
            if (
                path.StartsWith($"{full}.", StringComparison.Ordinal)
                && path.Length > start + Part.Length
                && int.TryParse(path.AsSpan(start..^Part.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var process)
                && !IsRunning(process)
            )
            {
                File.Delete(path);
            }
        }
    }

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
