using System.Globalization;
using System.Text;

namespace ExamDocs.Register.Log;

/// <summary>A string as RFC 8785 section 3.2.2.2 writes it: nothing is escaped that need not be.</summary>
internal static class CanonicalText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text, where all of it can be written in UTF-8.</summary>
    /// <exception cref="ArgumentException">Half of a surrogate pair is in it.</exception>
    public static string Sound(string text, string name)
    {
        ArgumentNullException.ThrowIfNull(text, name);
        try
        {
            _ = Strict.GetByteCount(text);
            return text;
        }
        catch (EncoderFallbackException half)
        {
            throw new ArgumentException("Half of a character is in it.", name, half);
        }
    }

    public static byte[] Encode(StringBuilder json) => Strict.GetBytes(json.ToString());

    public static StringBuilder AppendQuoted(this StringBuilder json, string text)
    {
        json.Append('"');
        foreach (var letter in text)
        {
            if (letter is '"' or '\\')
                json.Append('\\').Append(letter);
            else if (letter < ' ')
                json.Append(Escaped(letter));
            else
                json.Append(letter);
        }
        return json.Append('"');
    }

    private static string Escaped(char control) =>
        control switch
        {
            '\b' => "\\b",
            '\t' => "\\t",
            '\n' => "\\n",
            '\f' => "\\f",
            '\r' => "\\r",
            _ => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)control:x4}"),
        };
}
