using ExamDocs.Register.Files;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Contents;

/// <summary>
/// A folder, with a folder in it for each first two digits of a hash. A file in it says what it is: where that is missing, another disk
/// may be missing too, and no document is taken for lost.
/// </summary>
internal sealed class FolderStore(ContentAddress address) : ContentStore(address)
{
    private readonly string _folder = address.Folder!;

    public override void Prepare(string register) => Doing("written", () =>
        {
            Directory.CreateDirectory(_folder);
            FolderSync.Flush(Path.GetDirectoryName(_folder) ?? _folder);
            try
            {
                return DurableFile.PublishBesideOthers(_folder, Marker, MarkerOf(register));
            }
            catch (DocumentFileConflictException)
            {
                throw OfAnother();
            }
        });

    public override void Put(string sha256, byte[] bytes, LocalDate? keepUntil)
    {
        MustBeThere();
        Doing("written", () =>
        {
            var folder = Path.Combine(_folder, sha256[..2]);
            if (!Directory.Exists(folder))
            {
                Directory.CreateDirectory(folder);
                FolderSync.Flush(_folder);
            }
            try
            {
                return DurableFile.PublishBesideOthers(folder, sha256, bytes);
            }
            catch (DocumentFileConflictException)
            {
                throw OtherBytes(sha256);
            }
        });
    }

    public override byte[]? Find(string sha256)
    {
        MustBeThere();
        var path = PathOf(sha256);
        return Doing("read", () => File.Exists(path) ? File.ReadAllBytes(path) : null);
    }

    public override void Delete(string sha256)
    {
        MustBeThere();
        Doing("written", () =>
        {
            if (File.Exists(PathOf(sha256)))
                DurableFile.Remove(Path.GetDirectoryName(PathOf(sha256))!, sha256);
            return true;
        });
    }

    private string PathOf(string sha256) => Path.Combine(_folder, sha256[..2], sha256);

    private void MustBeThere()
    {
        if (!File.Exists(Path.Combine(_folder, Marker)))
            throw new ContentStoreException(
                $"The folder of the documents, {_folder}, is not there or is another one: {Marker} is not in it. Is its disk or "
                    + "network folder missing? Bring it back, then run the command again."
            );
    }

    private T Doing<T>(string what, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception failure) when (failure is (IOException and not ContentStoreException) or UnauthorizedAccessException)
        {
            throw new ContentStoreException($"{_folder}, where the documents are kept, cannot be {what}: {failure.Message}", failure);
        }
    }
}
