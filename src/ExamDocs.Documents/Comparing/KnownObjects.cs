using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Comparing;

/// <summary>Holds each object of a file, and each dictionary in it, against the entries that those of our documents have.</summary>
internal static class KnownObjects
{
    public static IEnumerable<string> Of(PdfObject o)
    {
        var body = o.Body.Span;
        if (!body.StartsWith("<<"u8))
            return OfValue("", o.Body);
        var dictionary = o.Dictionary();
        var isStream = new PdfLexer(body, dictionary.End) is var lexer && lexer.Next();
        return OfDictionary(RoleOf(dictionary) ?? (isStream ? "stream" : null), dictionary);
    }

    private static IEnumerable<string> OfDictionary(string? role, PdfDictionary dictionary) =>
        OfEntries(role, dictionary).Concat(dictionary.Entries.SelectMany(e => OfValue(e.Name, e.Value)));

    public static IEnumerable<string> OfEntries(string? role, PdfDictionary dictionary)
    {
        var names = dictionary.Entries.Select(e => e.Name).ToList();
        if (names.Count != names.Distinct(StringComparer.Ordinal).Count())
            yield return $"an object says {names.CountBy(n => n).First(c => c.Value > 1).Key} twice";
        if (IsNumbered(role, names))
            yield break;
        if (!KnownEntries.Allows(role, names))
            yield return $"an object that no document of ours has ({Name(role)}{string.Join(' ', names.Take(6))})";
        foreach (var (name, value) in dictionary.Entries)
        {
            if (
                KnownEntries.Values.TryGetValue(name, out var only)
                && !string.Equals(Encoding.Latin1.GetString(value.Span), only, StringComparison.Ordinal)
            )
                yield return $"{name} is not {only.TrimStart('/')}";
        }
    }

    /// <summary>Fonts, settings, patterns and pictures of a page are known to it by a letter and a number.</summary>
    private static bool IsNumbered(string? role, List<string> names) =>
        (role, names) switch
        {
            ("in Font", _) => names.TrueForAll(n => IsNumbered(n, 'F')),
            ("in ExtGState", _) => names.TrueForAll(n => IsNumbered(n, 'G')),
            ("in Pattern", _) => names.TrueForAll(n => IsNumbered(n, 'P')),
            ("in XObject", _) => names.TrueForAll(n => IsNumbered(n, 'X')),
            _ => false,
        };

    private static bool IsNumbered(string name, char letter) =>
        name.Length is > 1 and < 8 && name[0] == letter && name.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0;

    private static string Name(string? role) => role is null ? "" : role + ": ";

    private static IEnumerable<string> OfValue(string name, ReadOnlyMemory<byte> value)
    {
        if (value.Span.StartsWith("<<"u8))
            return PdfDictionary.Read(value) is var inner ? OfDictionary(RoleOf(inner) ?? "in " + name, inner) : [];
        return value.Span.StartsWith("["u8) ? Elements(value).SelectMany(e => OfValue(name, e)) : [];
    }

    private static List<ReadOnlyMemory<byte>> Elements(ReadOnlyMemory<byte> list)
    {
        var elements = new List<ReadOnlyMemory<byte>>();
        var inner = list[1..^1];
        var lexer = new PdfLexer(inner.Span);
        for (var ahead = lexer; ahead.Next(); ahead = lexer)
        {
            var (start, end) = lexer.Value();
            elements.Add(inner[start..end]);
        }
        return elements;
    }

    public static string? RoleOf(PdfDictionary dictionary) =>
        dictionary.Word("Type") is not { } type
            ? null
            : type + (type is "/StructElem" ? "" : dictionary.Word("Subtype") ?? dictionary.Word("S"));
}
