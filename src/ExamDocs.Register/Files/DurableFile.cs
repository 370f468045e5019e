using ExamDocs.Register.Log;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Files;

/// <summary>
/// Puts a file in place whole or not at all, and never over another: a temporary file in the same folder is flushed to
/// disk, renamed, and the folder flushed.
/// </summary>
internal static class DurableFile
{
    /// <summary>True where it was written, false where the same bytes were there already.</summary>
    /// <exception cref="DocumentFileConflictException">Different bytes, or a folder, are there; left alone.</exception>
    /// <exception cref="IOException">The disk is full or broken; nothing is at the final name.</exception>
    public static bool Publish(string folder, string name, byte[] bytes)
    {
        var target = Path.Combine(folder, name);
        if (Exists(target))
        {
            KeepSame(target, bytes);
            RemoveTemporary(folder, name);
            FolderSync.Flush(folder);
            return false;
        }
        WriteTemporary(folder, name, bytes);
        MoveIntoPlace(folder, name);
        return true;
    }

    /// <summary>First half: the bytes on disk under a name that nobody takes for a document.</summary>
    internal static void WriteTemporary(string folder, string name, byte[] bytes)
    {
        RemoveTemporary(folder, name);
        try
        {
            // CreateNew follows no link that somebody may have put there.
            using var stream = new FileStream(TemporaryPath(folder, name), FileMode.CreateNew, FileAccess.Write, FileShare.None);
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
        }
        catch (IOException)
        {
            RemoveTemporary(folder, name);
            throw;
        }
    }

    /// <summary>Second half: the final name.</summary>
    internal static void MoveIntoPlace(string folder, string name)
    {
        var target = Path.Combine(folder, name);
        try
        {
            File.Move(TemporaryPath(folder, name), target, overwrite: false);
        }
        catch (IOException) when (Exists(target))
        {
            RemoveTemporary(folder, name);
            throw new DocumentFileConflictException(target);
        }
        FolderSync.Flush(folder);
    }

    internal static string TemporaryPath(string folder, string name) => Path.Combine(folder, $".{name}.tmp");

    /// <summary>Takes away what an interrupted run left, if anything.</summary>
    internal static void RemoveTemporary(string folder, string name)
    {
        if (Directory.Exists(folder))
            File.Delete(TemporaryPath(folder, name));
    }

    /// <summary>True where a file at the path has exactly these bytes; a link to one is not the file.</summary>
    internal static bool HasHash(string path, string sha256)
    {
        if (!File.Exists(path) || new FileInfo(path).LinkTarget is not null)
            return false;
        using var stream = File.OpenRead(path);
        return string.Equals(Sha256Hex.Of(stream), sha256, StringComparison.Ordinal);
    }

    private static bool Exists(string target) => Path.Exists(target) || new FileInfo(target).LinkTarget is not null;

    private static void KeepSame(string target, byte[] bytes)
    {
        if (!HasHash(target, Sha256Hex.Of(bytes)))
            throw new DocumentFileConflictException(target);
        // It may be ours from a run that was stopped before it was safe on disk; it may also be read-only.
        using var handle = File.OpenHandle(target);
        if (!OperatingSystem.IsWindows())
            RandomAccess.FlushToDisk(handle);
    }
}
