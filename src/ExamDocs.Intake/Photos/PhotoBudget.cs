namespace ExamDocs.Intake.Photos;

/// <summary>What the photos of one record have cost so far, against the limits.</summary>
internal sealed class PhotoBudget
{
    private int _photos;
    private long _bytes;
    private long _pixels;

    /// <summary>Pixels unpacked so far.</summary>
    public long PixelsUnpacked => _pixels;

    /// <summary>Files opened so far.</summary>
    public int FilesOpened { get; private set; }

    public void Name() => Within(++_photos <= PhotoLimits.Photos);

    public void File(long bytes)
    {
        FilesOpened++;
        Within((_bytes += bytes) <= PhotoLimits.BytesTotal);
    }

    /// <summary>Called before they are unpacked.</summary>
    public void Pixels(long pixels)
    {
        Within(_pixels + pixels <= PhotoLimits.PixelsTotal);
        _pixels += pixels;
    }

    private static void Within(bool isWithin)
    {
        if (!isWithin)
            throw new PhotosSpentException();
    }
}

/// <summary>Ends the reading of a record's photos.</summary>
internal sealed class PhotosSpentException : Exception;
