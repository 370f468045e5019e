namespace ExamDocs.Register.Storage;

/// <summary>
/// Tells runs on one file apart, and which of them are alive. Each holds the operating system's lock on a file of its own beside the
/// register; the lock goes when its process does, even a killed one.
/// </summary>
internal sealed class RunFiles(string registerPath)
{
    private const int WouldBlockOnLinux = 11;
    private const int WouldBlockOnMac = 35;
    private const int SharingViolationOnWindows = unchecked((int)0x80070020);

    public RunHold Hold()
    {
        while (true)
        {
            var run = Guid.NewGuid().ToString("N");
            // Somebody looking for dead runs may take the lock between making the file and locking it; then another name is taken.
            if (TryLock(run, FileMode.CreateNew) is not { } held)
                continue;
            if (File.Exists(PathOf(run)))
                return new RunHold(run, () => End(held, run));
            held.Dispose();
        }
    }

    public bool HasEnded(string run)
    {
        if (!File.Exists(PathOf(run)))
            return true;
        if (TryLock(run, FileMode.Open) is not { } left)
            return false;
        End(left, run);
        return true;
    }

    /// <summary>Takes away the files of runs that were killed.</summary>
    public void RemoveEnded()
    {
        var (folder, name) = (Path.GetDirectoryName(registerPath)!, Path.GetFileName(registerPath));
        foreach (var file in Directory.EnumerateFiles(folder, $"{name}.run-*"))
            _ = HasEnded(Path.GetFileName(file)[(name.Length + ".run-".Length)..]);
    }

    private void End(FileStream held, string run)
    {
        // Windows deletes no file that is open.
        if (OperatingSystem.IsWindows())
            held.Dispose();
        try
        {
            File.Delete(PathOf(run));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // It stays behind unlocked, which shows as well that the run has ended.
        }
        held.Dispose();
    }

    /// <returns>Null where another holds it, or it is gone.</returns>
    private FileStream? TryLock(string run, FileMode mode)
    {
        try
        {
            return new(PathOf(run), mode, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        }
        catch (IOException held)
            when (held is FileNotFoundException || held.HResult is WouldBlockOnLinux or WouldBlockOnMac or SharingViolationOnWindows)
        {
            return null;
        }
    }

    private string PathOf(string run) => $"{registerPath}.run-{run}";
}
