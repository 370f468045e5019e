using System.Text;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Csv;

/// <summary>The text of a file that does not say how it is encoded, and the encoding it was taken for.</summary>
/// <param name="Text">Without its byte order mark.</param>
/// <param name="Encoding">UTF-8, UTF-16 or Windows-1252.</param>
internal sealed record CsvText(string Text, string Encoding)
{
    private const string Utf8 = "UTF-8";
    private const string Utf16 = "UTF-16";

    /// <summary>
    /// By the byte order mark; else UTF-16 where every other byte of the beginning is zero, UTF-8 where the bytes are
    /// sound UTF-8, and Windows-1252, in which every byte means something, where they are not.
    /// </summary>
    /// <exception cref="UnreadableWorkbookException">It is a workbook, or says that it is UTF-8 and is not.</exception>
    public static CsvText Of(byte[] bytes) =>
        bytes switch
        {
            _ when FileKind.IsPackage(bytes) => throw new UnreadableWorkbookException(
                "it is a workbook or an archive, not separated values; give a workbook the ending .xlsx"
            ),
            [0xEF, 0xBB, 0xBF, ..] => new(
                Unicode8(bytes, 3)
                    ?? throw new UnreadableWorkbookException("it says that it is UTF-8, and holds bytes that are not; save it again"),
                Utf8
            ),
            [0xFF, 0xFE, ..] => new(System.Text.Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2), Utf16),
            [0xFE, 0xFF, ..] => new(System.Text.Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2), Utf16),
            [not 0, 0, not 0, 0, ..] => new(System.Text.Encoding.Unicode.GetString(bytes), Utf16),
            [0, not 0, 0, not 0, ..] => new(System.Text.Encoding.BigEndianUnicode.GetString(bytes), Utf16),
            _ => Unmarked(bytes),
        };

    private static CsvText Unmarked(byte[] bytes) =>
        Unicode8(bytes, 0) is { } text
            ? new(text, Utf8)
            : new(CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes), "Windows-1252");

    /// <summary>Null where the bytes are not sound UTF-8.</summary>
    private static string? Unicode8(byte[] bytes, int from)
    {
        try
        {
            return new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(
                bytes,
                from,
                bytes.Length - from
            );
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
