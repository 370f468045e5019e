using System.Security.Cryptography;
using ExamDocs.Core.Findings;
using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Intake.Photos;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>A file that the user encloses: a PDF, or a picture.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Name">Its name in the pack, which every system takes; no other file of the pack has it.</param>
/// <param name="Sha256">Lower-case hexadecimal.</param>
/// <param name="Pages">How many pages it gives in a reading copy; null where it cannot be put into one.</param>
internal sealed record EvidenceFile(string Path, string Name, string Sha256, int? Pages)
{
    /// <summary>The file as it was when the pack was begun.</summary>
    /// <exception cref="IOException">It is gone, or was changed since.</exception>
    public byte[] Read()
    {
        var bytes = File.ReadAllBytes(Path);
        return string.Equals(Hash(bytes), Sha256, StringComparison.Ordinal)
            ? bytes
            : throw new IOException($"{Path} was changed while the pack was being built");
    }

    /// <summary>Its pages, to be read.</summary>
    public byte[] Readable() =>
        Readable(Path, Read(), Timeout.InfiniteTimeSpan) ?? throw new IOException($"{Path} was changed while the pack was being built");

    internal static byte[]? Readable(string path, byte[] bytes, TimeSpan patience)
    {
        if (ForeignPdf.Is(bytes))
            return ForeignPdf.Readable(bytes, patience);
        return PreparePhoto.From(System.IO.Path.GetDirectoryName(path)!, System.IO.Path.GetFileName(path)).Photo is { } picture
            ? PicturePage.Of(picture.Jpeg, picture.WidthPx, picture.HeightPx)
            : null;
    }

    internal static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}

/// <summary>Reads the folder of what the user encloses.</summary>
internal static class EvidenceFolder
{
    /// <summary>More than any certificate; a file of more is no evidence but an archive. Bytes, inclusive.</summary>
    private const long Largest = 64L * 1024 * 1024;

    /// <summary>Files of one folder, inclusive.</summary>
    private const int Most = 5_000;

    /// <param name="folder">As the user typed it; null for none.</param>
    /// <returns>The files by name; what was left out, a sentence each; and why the folder cannot be taken, null where it can.</returns>
    public static (IReadOnlyList<EvidenceFile> Files, IReadOnlyList<Message> LeftOut, Message? Refused) Read(string? folder)
    {
        if (folder is null)
            return ([], [], null);
        if (!Directory.Exists(folder))
            return ([], [], $"there is no folder {folder}");
        var paths = Directory.EnumerateFiles(folder).Where(p => !System.IO.Path.GetFileName(p).StartsWith('.')).Take(Most + 1).ToList();
        if (paths.Count > Most)
            return ([], [], $"{folder} has more than {Most} files: name a folder with nothing but evidence in it");
        var (files, leftOut, names) = (
            new List<EvidenceFile>(),
            new List<Message>(),
            new HashSet<string>(StringComparer.OrdinalIgnoreCase)
        );
        foreach (var path in paths.Order(StringComparer.Ordinal))
        {
            // A pipe or a device has no length, and reading it could wait for ever.
            if (new FileInfo(path).Length is 0 or > Largest)
                leftOut.Add($"{System.IO.Path.GetFileName(path)} is empty or larger than 64 MiB, and was left out");
            else if (BytesOf(path) is not { } bytes)
                leftOut.Add($"{System.IO.Path.GetFileName(path)} cannot be read, and was left out");
            else if (EndingOf(bytes) is not { } ending)
                leftOut.Add($"{System.IO.Path.GetFileName(path)} is no PDF, JPEG or PNG, and was left out");
            else
                files.Add(new(path, Name(path, ending, names), EvidenceFile.Hash(bytes), Pages(path, bytes)));
        }
        return ([.. files.OrderBy(f => f.Name, StringComparer.Ordinal)], leftOut, null);
    }

    private static int? Pages(string path, byte[] bytes) =>
        EvidenceFile.Readable(path, bytes, ForeignPdf.Patience) is { } readable ? CopyPart.PagesOf(readable) : null;

    /// <summary>Null for a link that leads nowhere, and for a file that this user may not read.</summary>
    private static byte[]? BytesOf(string path)
    {
        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is FileNotFoundException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>By what is in it; null for any other kind.</summary>
    private static string? EndingOf(ReadOnlySpan<byte> file) =>
        ForeignPdf.Is(file) ? ".pdf"
        : file.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]) ? ".jpg"
        : file.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47]) ? ".png"
        : null;

    /// <summary>
    /// Two names that some system takes for one get a number. A per cent sign would be a code in the list of sums. Under another ending a
    /// browser would open the file as what it is not.
    /// </summary>
    private static string Name(string path, string ending, HashSet<string> taken)
    {
        var safeEnding = System.IO.Path.GetExtension(path).ToLowerInvariant() is ".jpeg" && ending is ".jpg" ? ".jpeg" : ending;
        var stem = SafeFileName.Cut(SafeFileName.Part(System.IO.Path.GetFileNameWithoutExtension(path)), 100, 110).Replace('%', '-');
        stem = stem.Length == 0 ? "file" : stem;
        for (var n = 1; ; n++)
        {
            var name = n == 1 ? $"{stem}{safeEnding}" : FormattableString.Invariant($"{stem} ({n}){safeEnding}");
            if (taken.Add(name))
                return name;
        }
    }
}
