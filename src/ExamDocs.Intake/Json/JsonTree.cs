using System.Globalization;
using System.Text.Json;
using ExamDocs.Core;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Json;

/// <summary>Turns JSON text into source nodes, keeping duplicates and the characters of every number.</summary>
internal static class JsonTree
{
    /// <summary>More than a hundred thousand items need; larger files are refused before they are parsed.</summary>
    public const int MaxBytes = 64 * 1024 * 1024;

    /// <summary>Members and elements, inclusive: twenty thousand items with fifty each.</summary>
    public const int MaxValues = 1_000_000;

    /// <summary>Far more than any name that could be a slip of the pen for one of the format's, inclusive.</summary>
    private const int MaxNameBytes = 64 * 1024;

    /// <summary>Characters of all texts and numbers together, inclusive: twenty thousand items with four hundred each.</summary>
    public const int MaxText = 8_000_000;

    private const int MaxDepth = 32;

    /// <param name="utf8">The file.</param>
    /// <param name="isRecord">It is to be a record, of which no list has more rows than can be decided.</param>
    /// <returns>The root, or a sentence saying why there is none.</returns>
    public static (SourceNode? Root, string? Unreadable) Parse(ReadOnlyMemory<byte> utf8, bool isRecord = false)
    {
        if (utf8.Length > MaxBytes)
            return (null, "the file is larger than 64 MiB");
        try
        {
            if (TooMuchIn(WithoutByteOrderMark(utf8).Span, isRecord) is { } tooMuch)
                return (null, tooMuch);
            using var document = JsonDocument.Parse(WithoutByteOrderMark(utf8), new JsonDocumentOptions { MaxDepth = MaxDepth });
            return (Node(document.RootElement, ""), null);
        }
        catch (JsonException e)
        {
            var place = e.LineNumber is { } line
                ? string.Create(CultureInfo.InvariantCulture, $" at line {line + 1}, byte {e.BytePositionInLine + 1}")
                : "";
            return (null, $"the file is not valid JSON{place}");
        }
        catch (InvalidOperationException)
        {
            return (null, "the file holds text that is not valid Unicode");
        }
    }

    /// <summary>
    /// Counted before anything is kept: a file of empty lists, or of one name, would fill memory many times its own size.
    /// </summary>
    /// <returns>A sentence, or null where there is not too much.</returns>
    private static string? TooMuchIn(ReadOnlySpan<byte> utf8, bool isRecord)
    {
        var (values, rows, inList, characters) = (0, 0, false, 0L);
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = MaxDepth });
        while (values <= MaxValues && reader.Read())
        {
            if (reader.TokenType is JsonTokenType.PropertyName && reader.ValueSpan.Length > MaxNameBytes)
                return "a member's name is longer than any name of the format";
            var value = reader.TokenType is JsonTokenType.PropertyName or JsonTokenType.EndObject or JsonTokenType.EndArray ? 0 : 1;
            values += value;
            if (reader.TokenType is JsonTokenType.String or JsonTokenType.Number)
            {
                if (TooLong(ref reader, utf8, ref characters) is { } tooLong)
                    return tooLong;
            }
            // A list of the record itself; those within its rows are shorter than the values allowed.
            if (reader.CurrentDepth == 1)
                (rows, inList) = (0, isRecord && reader.TokenType is JsonTokenType.StartArray);
            else if (inList && reader.CurrentDepth == 2 && (rows += value) > RecordSizeLimit.Rows)
                return RecordSizeLimit.TooManyRows;
        }
        return values > MaxValues ? "the file holds more values than any recorded visit needs" : null;
    }

    private static string? TooLong(ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8, ref long characters)
    {
        var length = JsonText.LengthOf(reader.ValueSpan);
        if (length > TextGuard.MaxReadable)
        {
            var at = JsonPointer.Of(utf8, reader.TokenStartIndex);
            return reader.TokenType is JsonTokenType.Number
                ? $"the number at {at} has more digits than any number; type one of at most 28"
                : $"the text at {at} is longer than 32,767 characters; an identity may have 80, any other text 2,000";
        }
        characters += length;
        return characters <= MaxText
            ? null
            : "the texts of the file are longer together than those of any recorded visit; record the items in several files "
                + "with the same visit reference";
    }

    private static ReadOnlyMemory<byte> WithoutByteOrderMark(ReadOnlyMemory<byte> utf8) =>
        utf8.Span.StartsWith(new byte[] { 0xEF, 0xBB, 0xBF }) ? utf8[3..] : utf8;

    private static SourceNode Node(JsonElement element, JsonPlace at) =>
        element.ValueKind switch
        {
            JsonValueKind.Object => Object(element, at.ToString()),
            JsonValueKind.Array => List(element, at.ToString()),
            JsonValueKind.String => new TextNode(at, JsonText.Of(element)),
            JsonValueKind.Number => new NumberNode(at, element.GetRawText()),
            JsonValueKind.True => new BooleanNode(at, true),
            JsonValueKind.False => new BooleanNode(at, false),
            _ => new NullNode(at),
        };

    private static ObjectNode Object(JsonElement element, string at)
    {
        var members = new KeyValuePair<string, SourceNode>[element.GetPropertyCount()];
        var n = 0;
        foreach (var member in element.EnumerateObject())
        {
            var name = member.Name;
            members[n++] = new(name, Node(member.Value, new JsonPlace(at, Escape(name))));
        }
        return new ObjectNode(at, members);
    }

    private static ListNode List(JsonElement element, string at)
    {
        var elements = new SourceNode[element.GetArrayLength()];
        var n = 0;
        foreach (var one in element.EnumerateArray())
        {
            elements[n] = Node(one, new JsonPlace(at, n.ToString(CultureInfo.InvariantCulture)));
            n++;
        }
        return new ListNode(at, elements);
    }

    /// <summary>RFC 6901: ~ and / within a member's name.</summary>
    private static string Escape(string name) =>
        name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
}
