using System.IO.Compression;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Intake.Yard;

/// <summary>
/// Takes the archive apart that the form for the yard saves: one record, and the photos that it names. Names and sizes are looked at
/// before anything is unpacked; an archive of another make is not taken.
/// </summary>
public static class YardArchive
{
    private const string PhotoFolder = "photos/";
    private const string RecordEnding = ".json";

    /// <summary>Bytes that all files unpack to together, inclusive. Ours: 500 photos as the form makes them are about as much.</summary>
    private const long MostBytes = 400L * 1024 * 1024;

    /// <returns>Why it is not taken, in a sentence; null where it can be unpacked.</returns>
    public static string? WhyNot(Stream archive)
    {
        try
        {
            using var zip = new ZipArchive(archive, ZipArchiveMode.Read, leaveOpen: true);
            return WhyNot(zip.Entries);
        }
        // A directory that lies about places makes a stream that is asked for them throw in its own way.
        catch (Exception e) when (e is InvalidDataException or IOException or ArgumentException)
        {
            return "The archive is cut short or damaged, or is no archive (.zip): copy it once more.";
        }
    }

    /// <summary>Unpacks an archive against which <see cref="WhyNot(Stream)"/> has nothing.</summary>
    /// <param name="archive">From its beginning.</param>
    /// <param name="record">Path of the record to be made; the photos go into a folder beside it. A photo that is there stays.</param>
    /// <exception cref="InvalidDataException">It is damaged, or not such an archive.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static void Unpack(Stream archive, string record)
    {
        using var zip = new ZipArchive(archive, ZipArchiveMode.Read, leaveOpen: true);
        if (WhyNot(zip.Entries) is { } why)
            throw new InvalidDataException(why);
        var photos = Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(record)!, PhotoFolder)).FullName;
        foreach (var entry in Files(zip.Entries))
        {
            var path = IsPhoto(entry) ? Path.Combine(photos, entry.Name) : record;
            if (!IsPhoto(entry) || !File.Exists(path))
                entry.ExtractToFile(path);
        }
    }

    private static string? WhyNot(IReadOnlyList<ZipArchiveEntry> entries)
    {
        var files = Files(entries).ToList();
        var records = files.FindAll(IsRecord);
        return files.Find(f => !IsRecord(f) && !IsPhoto(f)) is { } other
                ? $"The archive is not as the form for the yard saves it: {other.FullName} is neither its record nor one of its photos."
            : records.Count != 1 || files.DistinctBy(f => f.FullName, StringComparer.OrdinalIgnoreCase).Count() != files.Count
                ? "The archive is not as the form for the yard saves it: there must be one record in it, and each photo once."
            : files.Exists(f => f.IsEncrypted) ? "The archive is protected with a password: bring it in without one."
            : records[0].Length > JsonRecordReader.MaxBytes
            || files.Count > PhotoLimits.Photos + 1
            || files.Exists(f => f.Length > PhotoLimits.FileBytes)
            || files.Sum(f => f.Length) > MostBytes
                ? "The archive unpacks to more than the form for the yard saves."
            : null;
    }

    /// <summary>Some programs that pack archives list the folders too.</summary>
    private static IEnumerable<ZipArchiveEntry> Files(IReadOnlyList<ZipArchiveEntry> entries) =>
        entries.Where(e => e is not { FullName: PhotoFolder, Length: 0 });

    private static bool IsRecord(ZipArchiveEntry entry) =>
        string.Equals(entry.FullName, entry.Name, StringComparison.Ordinal)
        && entry.Name.EndsWith(RecordEnding, StringComparison.OrdinalIgnoreCase);

    private static bool IsPhoto(ZipArchiveEntry entry) =>
        string.Equals(entry.FullName, PhotoFolder + entry.Name, StringComparison.Ordinal) && NamedBySum.Names(entry.Name);
}
