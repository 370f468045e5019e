using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Json;

/// <summary>
/// A message as a record keeps it: its English key with its values. So a document in any language can be made again from the record,
/// word for word.
/// </summary>
internal static class EmbeddedMessage
{
    private const string Key = "key";
    private const string Values = "values";

    public static SourceNode Node(Message message, string at) =>
        new TreeMembers(at)
            .Text(Key, message.Key)
            .Add(Values, list => new ListNode(list, [.. message.Values.Select((value, n) => Node(value, $"{list}/{Digits(n)}"))]))
            .Node;

    /// <param name="node">As <see cref="Node(Message, string)"/> wrote it; null where an earlier version wrote none.</param>
    /// <param name="english">What it says in English, which it must agree with.</param>
    public static Message Read(SourceNode? node, string english) =>
        Read(node) is { } read && string.Equals(read.Text, english, StringComparison.Ordinal) ? read : $"{new EnglishText(english)}";

    private static Message? Read(SourceNode? node) =>
        node is ObjectNode o && o.Text(Key) is { } key && o.Find(Values) is ListNode values
            ? Message.Again(key, [.. values.Elements.Select(Value)])
            : null;

    private static SourceNode Node(object? value, string at) =>
        value switch
        {
            Message message => Node(message, at),
            int or decimal => new NumberNode(at, MessageLanguage.English.Value(value)),
            _ => new TextNode(at, MessageLanguage.English.Value(value)),
        };

    private static object? Value(SourceNode node) =>
        node switch
        {
            TextNode text => text.Text,
            NumberNode number when decimal.TryParse(number.Raw, NumberStyles.Number, CultureInfo.InvariantCulture, out var value) => value,
            _ => Read(node),
        };

    private static string Digits(int number) => number.ToString(CultureInfo.InvariantCulture);
}
