using System.Globalization;
using System.Text;
using System.Text.Json;

namespace ExamDocs.Intake.Json;

/// <summary>
/// Text of a JSON value, even where an escape stands for half of a character pair: the parser refuses to hand that out,
/// and one bad text must not make the whole file unreadable. The half is kept, for the text guard to report at its place.
/// </summary>
internal static class JsonText
{
    public static string Of(JsonElement text)
    {
        try
        {
            return text.GetString()!;
        }
        catch (InvalidOperationException)
        {
            return Unescape(text.GetRawText().AsSpan()[1..^1]);
        }
    }

    /// <summary>Characters that a text or number has when its escapes are turned back, without turning them back.</summary>
    public static int LengthOf(ReadOnlySpan<byte> raw)
    {
        var length = 0;
        for (var i = 0; i < raw.Length; i++)
        {
            if (raw[i] is (byte)'\\')
                i += raw[i + 1] is (byte)'u' ? 5 : 1;
            else if ((raw[i] & 0xC0) == 0x80)
                continue;
            // Four bytes are a pair of characters.
            length += raw[i] >= 0xF0 ? 2 : 1;
        }
        return length;
    }

    /// <summary>RFC 8259 section 7. The text has passed the parser: every escape is complete.</summary>
    private static string Unescape(ReadOnlySpan<char> raw)
    {
        var text = new StringBuilder(raw.Length);
        for (var i = 0; i < raw.Length; i++)
        {
            if (raw[i] is not '\\')
            {
                text.Append(raw[i]);
            }
            else if (raw[++i] is 'u')
            {
                text.Append((char)ushort.Parse(raw.Slice(i + 1, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture));
                i += 4;
            }
            else
            {
                text.Append(Short(raw[i]));
            }
        }
        return text.ToString();
    }

    private static char Short(char escape) =>
        escape switch
        {
            'b' => '\b',
            'f' => '\f',
            'n' => '\n',
            'r' => '\r',
            't' => '\t',
            _ => escape,
        };
}
