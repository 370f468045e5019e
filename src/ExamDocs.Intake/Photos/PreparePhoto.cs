using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Reading;

namespace ExamDocs.Intake.Photos;

/// <summary>Reads one photo that a record names, and makes it ready to print.</summary>
public static class PreparePhoto
{
    /// <param name="folder">The folder in which the record lies; nothing outside it is opened.</param>
    /// <param name="name">The photo as the record names it, relative to the folder.</param>
    /// <returns>Never throws for what the name says or the file holds.</returns>
    public static PhotoReading From(string folder, string name)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        try
        {
            return new PhotoReading(From(PhotoFile.Read(PhotoPath.Find(folder, name))), null);
        }
        catch (PhotoRefusedException e)
        {
            return new PhotoReading(null, Fault(name, e));
        }
    }

    /// <summary>Takes in a photo that comes from elsewhere than a record's folder, if it can be printed.</summary>
    /// <param name="stream">Its file; it is left open.</param>
    /// <param name="length">Bytes of it.</param>
    /// <param name="name">What it was called there; it names nothing here.</param>
    /// <returns>
    /// The file's bytes as they came, with a name by their SHA-256, or why it is not taken in. Never throws for what it holds.
    /// </returns>
    public static (byte[]? File, string Name, PhotoFault? Fault) TakeIn(Stream stream, long length, string name)
    {
        try
        {
            var file = PhotoFile.Read(stream, length);
            var sum = From([.. file]).Sha256OfFile;
            return (file, $"sha256-{sum}.{(PictureKind.IsPng(file) ? "png" : "jpg")}", null);
        }
        catch (PhotoRefusedException e)
        {
            return (null, "", Fault(name, e));
        }
    }

    /// <param name="file">It must not be used again: what is not part of the picture is taken out of it.</param>
    /// <exception cref="PhotoRefusedException">It is not a picture that we print.</exception>
    internal static PreparedPhoto From(byte[] file, PhotoBudget? budget = null)
    {
        var sha256 = PhotoFile.Sha256(file);
        var (header, length) = Opened(file);
        budget?.Pixels(header.Pixels);
        var (jpeg, width, height) = PictureDecoder.ToPrint(file, length, header);
        FoundPrintable.Add(sha256, header.Pixels);
        return new PreparedPhoto(jpeg, width, height, sha256);
    }

    internal static PhotoFault Fault(string name, PhotoRefusedException refused) =>
        new(refused.Rule, $"the photo '{CellReading.Shown(name)}' {refused.Why}", refused.Hint);

    private static (PictureHeader Header, int Length) Opened(byte[] file) =>
        PictureKind.IsJpeg(file) ? (JpegHeader.Read(file), file.Length)
        : PictureKind.IsPng(file) ? PngChunks.Reduce(file)
        : throw new PhotoRefusedException(PhotoRules.NotPrintable, $"is {PictureKind.NameOf(file)}");
}
