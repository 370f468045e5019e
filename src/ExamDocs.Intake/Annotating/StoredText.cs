using System.Globalization;
using System.Text;

namespace ExamDocs.Intake.Annotating;

/// <summary>Text as the format stores it: what XML cannot hold is written as _xHHHH_, which readers turn back.</summary>
internal static class StoredText
{
    public static string Of(string text)
    {
        var stored = new StringBuilder(text.Length);
        for (var n = 0; n < text.Length; n++)
        {
            if (n + 1 < text.Length && char.IsSurrogatePair(text[n], text[n + 1]))
                stored.Append(text[n]).Append(text[++n]);
            else if (text[n] is '_' && IsEscape(text.AsSpan(n)))
                Escape(stored, '_');
            else if (char.IsSurrogate(text[n]) || text[n] is '\uFFFE' or '\uFFFF')
                stored.Append('\uFFFD');
            else if (text[n] < ' ' && text[n] is not ('\n' or '\t'))
                Escape(stored, text[n]);
            else
                stored.Append(text[n]);
        }
        return stored.ToString();
    }

    private static bool IsEscape(ReadOnlySpan<char> text) =>
        text.Length >= 7
        && text[1] is 'x'
        && text[6] is '_'
        && char.IsAsciiHexDigit(text[2])
        && char.IsAsciiHexDigit(text[3])
        && char.IsAsciiHexDigit(text[4])
        && char.IsAsciiHexDigit(text[5]);

    private static void Escape(StringBuilder stored, char letter) => stored.Append(CultureInfo.InvariantCulture, $"_x{(int)letter:X4}_");
}
