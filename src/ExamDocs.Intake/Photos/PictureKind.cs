using System.Text;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Photos;

/// <summary>Tells from its first bytes, not from its name, what kind of picture a file is.</summary>
internal static class PictureKind
{
    private static readonly byte[] Png = [0x89, .. "PNG\r\n\x1A\n"u8];

    public static bool IsJpeg(ReadOnlySpan<byte> file) => file is [0xFF, 0xD8, 0xFF, ..];

    public static bool IsPng(ReadOnlySpan<byte> file) => file.StartsWith(Png);

    /// <summary>What a file is that is neither JPEG nor PNG, as the end of "the photo is ...".</summary>
    public static Message NameOf(ReadOnlySpan<byte> file) =>
        file switch
        {
            [_, _, _, _, (byte)'f', (byte)'t', (byte)'y', (byte)'p', ..] => Boxed(file),
            [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..] => $"a WebP picture",
            [(byte)'G', (byte)'I', (byte)'F', (byte)'8', ..] => $"a GIF picture",
            [(byte)'I', (byte)'I', 0x2A or 0x2B, 0, ..] or [(byte)'M', (byte)'M', 0, 0x2A or 0x2B, ..] =>
                $"a TIFF picture or a camera's raw picture",
            [(byte)'B', (byte)'M', ..] => $"a BMP picture",
            [0xFF, 0x0A, ..] or [0, 0, 0, 0x0C, (byte)'J', (byte)'X', (byte)'L', ..] => $"a JPEG XL picture",
            [0, 0, 0, 0x0C, (byte)'j', (byte)'P', ..] => $"a JPEG 2000 picture",
            [(byte)'%', (byte)'P', (byte)'D', (byte)'F', ..] => $"a PDF document",
            [(byte)'P', (byte)'K', 3, 4, ..] => $"an archive or an office document",
            _ => IsSvg(file) ? (Message)$"an SVG drawing" : $"neither a JPEG nor a PNG picture, whatever its name says",
        };

    /// <summary>By the brand, ISO/IEC 14496-12; HEIF brands by ISO/IEC 23008-12.</summary>
    private static Message Boxed(ReadOnlySpan<byte> file) =>
        Encoding.Latin1.GetString(file[8..Math.Min(12, file.Length)]) switch
        {
            "heic" or "heix" or "heim" or "heis" or "hevc" or "hevx" => $"a HEIC picture",
            "mif1" or "msf1" or "heif" => $"a HEIF picture",
            "avif" or "avis" => $"an AVIF picture",
            "crx " => $"a camera's raw picture",
            _ => $"a film, not a picture",
        };

    private static bool IsSvg(ReadOnlySpan<byte> file) =>
        Encoding.Latin1.GetString(file[..Math.Min(1024, file.Length)]) is var text
        && text.Contains("<svg", StringComparison.OrdinalIgnoreCase);
}
