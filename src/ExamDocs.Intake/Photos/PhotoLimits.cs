namespace ExamDocs.Intake.Photos;

/// <summary>
/// What photos may cost at most. The figures are ours: above any camera's picture and any visit's album, and low enough
/// that a hostile file is refused from its header, before it is unpacked.
/// </summary>
internal static class PhotoLimits
{
    /// <summary>Bytes of one file, inclusive.</summary>
    public const int FileBytes = 40 * 1024 * 1024;

    /// <summary>Width times height, inclusive.</summary>
    public const long Pixels = 100_000_000;

    /// <summary>Width or height in pixels, inclusive.</summary>
    public const int Side = 20_000;

    /// <summary>
    /// Bytes that unpacking may have to hold at once, inclusive. A picture stored in several passes is held whole; any
    /// other is unpacked a line at a time.
    /// </summary>
    public const long BytesHeldWhole = 128L * 1024 * 1024;

    /// <summary>Pixels unpacked at a time where the decoder gives no single lines, inclusive; at least a line is.</summary>
    public const int PixelsAtATime = 16_000_000;

    /// <summary>Passes in which one JPEG may be stored, inclusive; programs use up to about a dozen.</summary>
    public const int Scans = 40;

    /// <summary>Bytes of a colour profile, packed, inclusive; a larger one is passed over.</summary>
    public const int ProfileBytes = 1024 * 1024;

    /// <summary>Different photos that one record may name, inclusive.</summary>
    public const int Photos = 500;

    /// <summary>Bytes of all files of one record together, inclusive.</summary>
    public const long BytesTotal = 2L * 1024 * 1024 * 1024;

    /// <summary>Pixels of all photos of one record together, inclusive: as many photos of twelve million each.</summary>
    public const long PixelsTotal = Photos * 12_000_000L;
}
