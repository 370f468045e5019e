namespace ExamDocs.UseCases.Outputs;

/// <summary>Whether a folder can be written to, found out before the work begins.</summary>
internal static class OutputFolder
{
    /// <summary>EROFS.</summary>
    private const int ReadOnlyFileSystem = 30;

    /// <summary>Why nothing can be written into a folder; null where something can, or where only the disk is full.</summary>
    /// <param name="full">Its full path; where it is missing, that of the folder above counts, in which it is made.</param>
    /// <param name="named">As the user typed it; empty for the folder worked in.</param>
    public static string? Objection(string full, string named)
    {
        var shown = named.Length == 0 ? "the folder worked in" : $"the folder {named}";
        var there = full;
        while (!Directory.Exists(there))
        {
            if (File.Exists(there))
                return string.Equals(there, full, StringComparison.Ordinal)
                    ? $"{named} is a file, and a folder is needed there: name another folder"
                    : $"{shown} cannot be made: {Path.GetFileName(there)} is a file; name another folder";
            if (Path.GetDirectoryName(there) is not { } above)
                return $"there is no {shown[4..]}: name another";
            there = above;
        }
        return !IsRefused(there) ? null
            : string.Equals(there, full, StringComparison.Ordinal)
                ? $"{shown} cannot be written to: name another folder, or give yourself the right to write there"
            : $"{shown} is not there and cannot be made: name another folder";
    }

    /// <summary>Whether names that differ in the case of their letters mean one file there.</summary>
    public static bool IgnoresCase(string folder)
    {
        if (!Directory.Exists(folder))
            return !OperatingSystem.IsLinux();
        try
        {
            using var probe = Probe(folder);
            return File.Exists(Path.Combine(folder, Path.GetFileName(probe.Name).ToUpperInvariant()));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static bool IsRefused(string folder)
    {
        try
        {
            Probe(folder).Dispose();
            return false;
        }
        catch (UnauthorizedAccessException)
        {
            return true;
        }
        catch (IOException e)
        {
            // A full disk is none of the user's mistakes.
            return e is DirectoryNotFoundException or FileNotFoundException || (e.HResult & 0xffff) == ReadOnlyFileSystem;
        }
    }

    /// <summary>A file that is gone as soon as it is closed; one that a killed run left goes with the next.</summary>
    private static FileStream Probe(string folder)
    {
        var probe = Path.Combine(folder, ".examdocs");
        WholeFile.RemoveLeftBehind(probe);
        return new(
            WholeFile.TemporaryName(probe),
            FileMode.CreateNew,
            FileAccess.Write,
            FileShare.None,
            bufferSize: 1,
            FileOptions.DeleteOnClose
        );
    }
}
