using System.Runtime.CompilerServices;
using System.Text;

namespace ExamDocs.Core.Findings;

/// <summary>
/// A sentence of the program with its values, kept apart until somebody reads it in a language. It is written as an interpolated
/// string, <c>$"'{typed}' is not a category"</c>; what is between the values is the key of its translations. Two are equal where
/// their English is equal.
/// </summary>
/// <remarks>
/// There is no conversion from <see cref="string"/>, nor to it: a sentence put together as a string would have lost its key, so it
/// does not compile. Text that is the same in every language says so with <see cref="AsIs"/>.
/// </remarks>
[InterpolatedStringHandler]
public sealed class Message : IEquatable<Message>
{
    private readonly List<string> _between = [""];
    private readonly List<object?> _values;
    private Func<MessageLanguage, string, string>? _reworded;
    private string? _text;

    /// <summary>For the compiler.</summary>
    public Message(int literalLength, int formattedCount) => _values = new List<object?>(formattedCount);

    private Message(Message other) => (_between, _values, _reworded) = (other._between, other._values, other._reworded);

    /// <summary>Nothing said.</summary>
    public static Message None { get; } = AsIs("");

    /// <summary>In English.</summary>
    public string Text => _text ??= In(MessageLanguage.English);

    /// <summary>The English between the values, with {0}, {1} in their places: the key of its translations.</summary>
    public string Key
    {
        get
        {
            var key = new StringBuilder(Escaped(_between[0]));
            for (var n = 0; n < _values.Count; n++)
                key.Append('{').Append(n).Append('}').Append(Escaped(_between[n + 1]));
            return key.ToString();
        }
    }

    /// <summary>What is said with the values, in their order.</summary>
    public IReadOnlyList<object?> Values => _values;

    /// <summary>Text that is the same in every language: names, what the user typed, what is cited.</summary>
    public static Message AsIs(string text)
    {
        var message = new Message(0, 1);
        message.AppendFormatted(text);
        return message;
    }

    /// <summary>Several sentences or names one after the other, those that are null left out.</summary>
    public static Message Join(string between, params IEnumerable<Message?> parts)
    {
        var message = new Message(0, 0);
        foreach (var part in parts.OfType<Message>())
        {
            if (message._values.Count > 0)
                message.AppendFormatted(between);
            message.AppendFormatted(part);
        }
        return message;
    }

    /// <summary>The message of a key and its values, as they were kept; null where the key has other gaps than there are values.</summary>
    public static Message? Again(string key, IReadOnlyList<object?> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (MessageTemplate.Parse(key) is not { } template || !template.Order.SequenceEqual(Enumerable.Range(0, values.Count)))
            return null;
        var message = new Message(key.Length, values.Count);
        message.AppendLiteral(template.Between[0]);
        foreach (var (n, value) in values.Index())
        {
            message.AppendFormatted(value);
            message.AppendLiteral(template.Between[n + 1]);
        }
        return message;
    }

    /// <summary>For the compiler.</summary>
    public void AppendLiteral(string value) => _between[^1] += value;

    /// <summary>For the compiler.</summary>
    public void AppendFormatted<T>(T value)
    {
        _values.Add(value);
        _between.Add("");
    }

    /// <summary>The same message, its words changed once they are in a language.</summary>
    public Message Reworded(Func<MessageLanguage, string, string> change) => new(this) { _reworded = change };

    /// <summary>In the words of a language.</summary>
    public string In(MessageLanguage language)
    {
        ArgumentNullException.ThrowIfNull(language);
        var text = _values is [Message only] && _between.TrueForAll(b => b.Length == 0) ? only.In(language) : Said(language);
        return _reworded is null ? text : _reworded(language, text);
    }

    public bool Equals(Message? other) => other is not null && string.Equals(Text, other.Text, StringComparison.Ordinal);

    public override bool Equals(object? obj) => Equals(obj as Message);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    public override string ToString() => Text;

    private string Said(MessageLanguage language)
    {
        var between = _between;
        var order = Enumerable.Range(0, _values.Count);
        if (_between.Exists(b => b.Length > 0) && language.Translation(Key) is { } translated)
            (between, order) = (translated.Between, translated.Order);
        var text = new StringBuilder(between[0]);
        foreach (var (n, at) in order.Index())
            text.Append(language.Value(_values[at])).Append(between[n + 1]);
        return text.ToString();
    }

    private static string Escaped(string literal) =>
        literal.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal);
}
