using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Photos;

/// <summary>Finds the file that a record names as a photo, within the record's folder and nowhere else.</summary>
internal static class PhotoPath
{
    /// <summary>Links followed one after another, inclusive, before they are taken to run in a ring; systems stop at 40.</summary>
    private const int Links = 40;

    /// <summary>Names that one system keeps for devices, whatever their ending.</summary>
    private static readonly HashSet<string> DeviceNames = new(StringComparer.OrdinalIgnoreCase)
    {
        "CON",
        "PRN",
        "AUX",
        "NUL",
        "CONIN$",
        "CONOUT$",
        "COM0",
        "COM1",
        "COM2",
        "COM3",
        "COM4",
        "COM5",
        "COM6",
        "COM7",
        "COM8",
        "COM9",
        "LPT0",
        "LPT1",
        "LPT2",
        "LPT3",
        "LPT4",
        "LPT5",
        "LPT6",
        "LPT7",
        "LPT8",
        "LPT9",
    };

    /// <param name="folder">The record's folder.</param>
    /// <param name="name">As typed; both kinds of slash divide folders.</param>
    /// <returns>The file's path with every link resolved.</returns>
    /// <exception cref="PhotoRefusedException">It is not there, or not within the folder.</exception>
    public static string Find(string folder, string name)
    {
        var steps = Steps(name);
        try
        {
            var root = Real(Path.GetFullPath(folder), Links);
            var file = Real(Path.Combine([root, .. steps]), Links);
            if (!file.StartsWith(Path.EndsInDirectorySeparator(root) ? root : root + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                throw Outside($"is reached over a link that leads out of the record's folder");
            return Directory.Exists(file) ? throw new PhotoRefusedException(PhotoRules.NotPrintable, $"is a folder")
                : File.Exists(file) ? file
                : throw new PhotoRefusedException(PhotoRules.NotFound, $"is not there");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new PhotoRefusedException(PhotoRules.NotFound, $"cannot be reached");
        }
    }

    private static string[] Steps(string name)
    {
        if (name.Contains('\0', StringComparison.Ordinal))
            throw new PhotoRefusedException(PhotoRules.NotFound, $"is not there");
        if (name[0] is '/' or '\\' || name.Contains(':', StringComparison.Ordinal))
            throw Outside($"is named by a drive, a server or a whole path, not from the record's folder");
        var steps = name.Split(['/', '\\'], StringSplitOptions.RemoveEmptyEntries);
        if (steps.Contains("..", StringComparer.Ordinal))
            throw Outside($"is named through a folder above ('..')");
        return Array.Exists(steps, s => DeviceNames.Contains(s.Split('.')[0].Trim()))
            ? throw new PhotoRefusedException(
                PhotoRules.NotPrintable,
                $"has a name that means a device, not a file",
                $"Give the file another name."
            )
            : steps;
    }

    private static PhotoRefusedException Outside(Message why) => new(PhotoRules.OutsideFolder, why);

    /// <summary>The path with the links of every step resolved; what is not there is left as it is named.</summary>
    private static string Real(string path, int linksLeft)
    {
        var real = Path.GetPathRoot(path)!;
        foreach (var step in path[real.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            var next = Path.GetFullPath(Path.Combine(real, step));
            real = new FileInfo(next) is { LinkTarget: not null } link ? Followed(link, linksLeft) : next;
        }
        return real;
    }

    private static string Followed(FileInfo link, int linksLeft) =>
        linksLeft == 0
            ? throw new IOException("links run in a ring")
            : Real(Path.GetFullPath(Path.Combine(link.DirectoryName!, link.LinkTarget!)), linksLeft - 1);
}
