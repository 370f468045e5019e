namespace ExamDocs.Templates;

/// <summary>A photo that is ready to print. It stands in the page itself: nothing is fetched to show it.</summary>
/// <param name="jpeg">A JPEG, upright and without anything beside the picture.</param>
/// <param name="widthPx">Its width in pixels, 1 or more.</param>
/// <param name="heightPx">Its height in pixels, 1 or more.</param>
public sealed class PhotoPrint(ReadOnlyMemory<byte> jpeg, int widthPx, int heightPx)
{
    public int WidthPx => widthPx;

    public int HeightPx => heightPx;

    internal string Source => "data:image/jpeg;base64," + Convert.ToBase64String(jpeg.Span);
}
