using System.Security.Cryptography;

namespace ExamDocs.UseCases.Outputs;

/// <summary>Whether two names mean one file: by way of links, another path, or letters in another case.</summary>
internal static class SameFile
{
    /// <summary>Links that lead in a circle are followed no further than this.</summary>
    private const int MostLinks = 20;

    /// <summary>
    /// Whether two names mean one file that is there. A hard link cannot be told from a copy, and a copy counts as the file itself.
    /// </summary>
    public static bool Is(string one, string other) => HaveOneName(one, other, ignoreCase: false) || HaveOneContent(one, other);

    /// <summary>Whether two names would mean one file once it is written.</summary>
    public static bool WouldBe(string one, string other) =>
        HaveOneName(one, other, ignoreCase: false)
        || (HaveOneName(one, other, ignoreCase: true) && OutputFolder.IgnoresCase(Path.GetDirectoryName(Path.GetFullPath(one))!));

    /// <summary>The file that a path leads to, whether it is there or not, with the links on the way followed.</summary>
    public static string RealPath(string path, int links = 0)
    {
        var full = Path.GetFullPath(path);
        if (Path.GetDirectoryName(full) is not { } folder)
            return full;
        var real = RealPath(folder, links);
        return links < MostLinks && new FileInfo(full).LinkTarget is { } target
            ? RealPath(Path.Combine(real, target), links + 1)
            : Path.Combine(real, Path.GetFileName(full));
    }

    private static bool HaveOneName(string one, string other, bool ignoreCase) =>
        string.Equals(RealPath(one), RealPath(other), ignoreCase ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal);

    private static bool HaveOneContent(string one, string other)
    {
        var (first, second) = (new FileInfo(RealPath(one)), new FileInfo(RealPath(other)));
        return first is { Exists: true, Length: > 0 }
            && second is { Exists: true }
            && first.Length == second.Length
            && Hash(first).AsSpan().SequenceEqual(Hash(second));
    }

    private static byte[] Hash(FileInfo file)
    {
        using var stream = file.OpenRead();
        return SHA256.HashData(stream);
    }
}
