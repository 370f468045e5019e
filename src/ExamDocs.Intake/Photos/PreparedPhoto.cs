namespace ExamDocs.Intake.Photos;

/// <summary>
/// A photo as it is printed: upright, at the size of print, in sRGB, and without anything that the camera or a program
/// wrote beside the picture (place, time, names, profile, comment).
/// </summary>
public sealed class PreparedPhoto
{
    internal PreparedPhoto(ReadOnlyMemory<byte> jpeg, int widthPx, int heightPx, string sha256OfFile) =>
        (Jpeg, WidthPx, HeightPx, Sha256OfFile) = (jpeg, widthPx, heightPx, sha256OfFile);

    /// <summary>A baseline JPEG, which we packed.</summary>
    public ReadOnlyMemory<byte> Jpeg { get; }

    /// <summary>Width of <see cref="Jpeg"/> in pixels, as seen upright.</summary>
    public int WidthPx { get; }

    /// <summary>Height of <see cref="Jpeg"/> in pixels, as seen upright.</summary>
    public int HeightPx { get; }

    /// <summary>SHA-256 of the file as it was found, in lower-case hexadecimal digits.</summary>
    public string Sha256OfFile { get; }
}
