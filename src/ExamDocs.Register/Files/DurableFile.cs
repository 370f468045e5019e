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
        var isNew = Put(folder, name, bytes);
        FolderSync.Flush(folder);
        return isNew;
    }

    /// <summary>
    /// The same where others may be writing the very same file: each has a temporary file of its own, and whichever comes last finds it.
    /// </summary>
    /// <inheritdoc cref="Publish"/>
    public static bool PublishBesideOthers(string folder, string name, byte[] bytes)
    {
        var (target, own) = (Path.Combine(folder, name), $"{name}.{Guid.NewGuid():N}");
        var isNew = !ExclusiveMove.IsTaken(target);
        if (isNew)
        {
            WriteTemporary(folder, own, bytes);
            try
            {
                // Never an empty file in its place first: a run killed then would leave one for good.
                File.Move(TemporaryPath(folder, own), target, overwrite: false);
            }
            catch (IOException) when (ExclusiveMove.IsTaken(target))
            {
                RemoveTemporary(folder, own);
                isNew = false;
            }
        }
        if (!isNew)
            KeepSame(target, bytes);
        FolderSync.Flush(folder);
        return isNew;
    }

    /// <summary>The same for several files of one folder, which is flushed once.</summary>
    /// <returns>For each, in order, why it is not in place; null where it is.</returns>
    public static IReadOnlyList<Exception?> PublishAll(string folder, IReadOnlyList<(string Name, byte[] Bytes)> files)
    {
        var failures = new Exception?[files.Count];
        // A disk flushes several files in hardly more time than one.
        Parallel.For(0, files.Count, n => failures[n] = Failure(() => Put(folder, files[n].Name, files[n].Bytes)));
        return Failure(() => FolderSync.Flush(folder)) is { } lost ? [.. failures.Select(f => f ?? lost)] : failures;
    }

    private static Exception? Failure(Action work)
    {
        try
        {
            work();
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return failure;
        }
    }

    private static bool Put(string folder, string name, byte[] bytes)
    {
        var target = Path.Combine(folder, name);
        if (ExclusiveMove.IsTaken(target))
        {
            KeepSame(target, bytes);
            RemoveTemporary(folder, name);
            return false;
        }
        WriteTemporary(folder, name, bytes);
        Move(folder, name);
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
        Move(folder, name);
        FolderSync.Flush(folder);
    }

    private static void Move(string folder, string name)
    {
        var target = Path.Combine(folder, name);
        if (!ExclusiveMove.Try(TemporaryPath(folder, name), target))
        {
            RemoveTemporary(folder, name);
            throw new DocumentFileConflictException(target);
        }
    }

    /// <summary>
    /// Moves a file with a known hash into a subfolder of its folder. A move that was cut short left it in both: it is then taken out of
    /// the upper one.
    /// </summary>
    /// <returns>False where no such file is in the folder.</returns>
    /// <exception cref="DocumentFileConflictException">Another file of that name is in the subfolder; both stay.</exception>
    public static bool MoveInto(string folder, string subfolder, string name, string sha256)
    {
        var (source, target) = (Path.Combine(folder, name), Path.Combine(folder, subfolder, name));
        if (!HasHash(source, sha256))
            return false;
        Directory.CreateDirectory(Path.Combine(folder, subfolder));
        if (!ExclusiveMove.Try(source, target))
        {
            if (!HasHash(target, sha256))
                throw new DocumentFileConflictException(target);
            File.Delete(source);
        }
        FolderSync.Flush(Path.Combine(folder, subfolder));
        FolderSync.Flush(folder);
        return true;
    }

    /// <summary>Gives a file with a known hash another name. A change that was cut short left it under both: the first goes.</summary>
    /// <returns>False where another file has that name; both are as they were.</returns>
    public static bool Rename(string folder, string name, string to, string sha256)
    {
        var (source, target) = (Path.Combine(folder, name), Path.Combine(folder, to));
        if (!ExclusiveMove.Try(source, target))
        {
            if (!HasHash(target, sha256))
                return false;
            File.Delete(source);
        }
        FolderSync.Flush(folder);
        return true;
    }

    /// <summary>Deletes a file that is there, for good.</summary>
    public static void Remove(string folder, string name)
    {
        File.Delete(Path.Combine(folder, name));
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
