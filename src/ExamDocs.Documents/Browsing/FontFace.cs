namespace ExamDocs.Documents.Browsing;

/// <summary>One face of the documents' type, as a rule of a style sheet with the font itself in it.</summary>
internal sealed record FontFace(string Family, bool IsBold, bool IsItalic, byte[] Font)
{
    /// <param name="file">Its name, as the makers of the fonts write it, for example NotoSansDisplay-Bold.ttf.</param>
    /// <param name="font">What is in it.</param>
    /// <exception cref="ArgumentException">No face of the documents' type is called so.</exception>
    public static FontFace Of(string file, byte[] font) =>
        Path.GetFileNameWithoutExtension(file).Split('-') switch
        {
            ["NotoSans", var style] => Of("Noto Sans", style, font),
            ["NotoSansDisplay", var style] => Of("Noto Sans Display", style, font),
            _ => throw new ArgumentException($"{file} is no font of the documents", nameof(file)),
        };

    public string Rule =>
        $"@font-face {{ font-family: \"{Family}\"; font-weight: {(IsBold ? "bold" : "normal")}; "
        + $"font-style: {(IsItalic ? "italic" : "normal")}; "
        + $"src: url(data:font/ttf;base64,{Convert.ToBase64String(Font)}) format(\"truetype\"); }}";

    private static FontFace Of(string family, string style, byte[] font) =>
        new(family, style.StartsWith("Bold", StringComparison.Ordinal), style.EndsWith("Italic", StringComparison.Ordinal), font);
}
