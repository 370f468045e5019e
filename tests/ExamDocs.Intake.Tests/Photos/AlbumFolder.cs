using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Intake.Tests.Photos;

/// <summary>A folder with a record's photos in it, gone when the test is done.</summary>
internal sealed class AlbumFolder : IDisposable
{
    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("examdocs-photos-");

    public AlbumFolder() => Directory.CreateDirectory(Path);

    /// <summary>Where the record lies: a folder within another, so that there is something outside.</summary>
    public string Path => System.IO.Path.Combine(_root.FullName, "record");

    public string Outside(string name) => System.IO.Path.Combine(_root.FullName, name);

    public string Put(string name, byte[] bytes)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    public PreparedPhoto Prepared(byte[] bytes)
    {
        Put("a.jpg", bytes);
        var read = PreparePhoto.From(Path, "a.jpg");
        Assert.Null(read.Fault?.Message);
        return read.Photo!;
    }

    /// <summary>The fault of the one photo of a record, found by looking through the record.</summary>
    public Finding Fault(byte[] bytes, string name = "a.jpg")
    {
        Put(name, bytes);
        return Fault(name);
    }

    public Finding Fault(string name)
    {
        var found = Assert.Single(RecordPhotos.Check(Record(name), Path));
        Assert.Equal(("/examinations/0/observations/0/photo", "H-1", Severity.Warning), (found.Path, found.Item, found.Severity));
        Assert.Equal(found.Message, PreparePhoto.From(Path, name).Fault!.Message);
        return found;
    }

    public static ExaminationRecord Record(params IEnumerable<string?> names) =>
        new()
        {
            Examinations =
            [
                new() { Item = "H-1", Observations = [.. names.Select(n => new Observation { Criterion = "identity", Photo = n })] },
            ],
        };

    public void Dispose() => _root.Delete(recursive: true);
}
