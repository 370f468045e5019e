using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Register.Log;

/// <summary>A JSON object as RFC 8785 writes it: members in the order of their names, those without a value left out.</summary>
internal sealed class CanonicalObject
{
    private readonly SortedDictionary<string, string> _members = new(StringComparer.Ordinal);

    public CanonicalObject Text(string name, string? value) => value is null ? this : Raw(name, Quoted(value));

    public CanonicalObject Number(string name, long? value) =>
        value is { } number ? Raw(name, number.ToString(CultureInfo.InvariantCulture)) : this;

    public CanonicalObject True(string name, bool value) => value ? Raw(name, "true") : this;

    public CanonicalObject Day(string name, LocalDate? value) =>
        value is { } day ? Raw(name, Quoted(LocalDatePattern.Iso.Format(day))) : this;

    public CanonicalObject Texts(string name, IEnumerable<string>? values) =>
        values is null ? this : Raw(name, $"[{string.Join(',', values.Select(Quoted))}]");

    public CanonicalObject Objects(string name, IEnumerable<CanonicalObject>? values) =>
        values is null ? this : Raw(name, $"[{string.Join(',', values)}]");

    public byte[] Bytes() => CanonicalText.Encode(new StringBuilder(ToString()));

    public override string ToString() =>
        new StringBuilder("{").AppendJoin(',', _members.Select(m => $"{Quoted(m.Key)}:{m.Value}")).Append('}').ToString();

    private CanonicalObject Raw(string name, string json)
    {
        _members.Add(name, json);
        return this;
    }

    private static string Quoted(string text) => new StringBuilder(text.Length + 2).AppendQuoted(text).ToString();
}
