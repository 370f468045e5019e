using System.Globalization;
using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Comparing;

/// <summary>
/// Holds a file against the structure that our documents have, whatever their version: what none of them has is refused,
/// whether or not it is known to do harm.
/// </summary>
public static class KnownStructure
{
    private const int MostTold = 5;

    /// <param name="pdf">The whole file.</param>
    /// <returns>What is foreign in it, a few words each; empty where nothing is.</returns>
    /// <exception cref="PdfSyntaxException">It is none that was finished here.</exception>
    public static IReadOnlyList<string> Faults(byte[] pdf)
    {
        var source = PdfSource.Read(pdf);
        List<string> found =
        [
            .. OfFile(source, pdf),
            .. OfEntries("trailer", source.Trailer),
            .. source.Objects.SelectMany(OfObject),
            .. OfCatalog(source),
        ];
        if (found.Count == 0)
            found.AddRange(
                PageTree
                    .Of(source)
                    .Select((page, index) => (page, index))
                    .SelectMany(p =>
                        KnownContent
                            .Faults(source, p.page)
                            .Select(f => string.Create(CultureInfo.InvariantCulture, $"page {p.index + 1}: {f}"))
                    )
            );
        return [.. found.Distinct(StringComparer.Ordinal).Take(MostTold)];
    }

    /// <summary>
    /// Nothing stands between the objects, before or after them: written once more, the file is the same but for its identifier.
    /// </summary>
    private static IEnumerable<string> OfFile(PdfSource source, byte[] pdf)
    {
        var again = new PdfTarget(source).Write(
            source.Catalog.Number,
            source.Trailer.Reference("Info") ?? throw new PdfSyntaxException("it does not say what it is")
        );
        if (again.Length != pdf.Length || !WithoutIdentifier(again).AsSpan().SequenceEqual(WithoutIdentifier(pdf)))
            yield return "it is not written as this program writes a file, or holds more than its table says";
    }

    private static byte[] WithoutIdentifier(byte[] pdf)
    {
        var copy = pdf.ToArray();
        var at = copy.AsSpan().LastIndexOf("/ID [<"u8);
        if (at >= 0)
            copy.AsSpan(at, Math.Min(IdentifierLength, copy.Length - at)).Clear();
        return copy;
    }

    /// <summary>/ID [&lt;32 digits&gt; &lt;32 digits&gt;]</summary>
    private const int IdentifierLength = 75;

    private static IEnumerable<string> OfObject(PdfObject o)
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

    private static IEnumerable<string> OfEntries(string? role, PdfDictionary dictionary)
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

    private static string? RoleOf(PdfDictionary dictionary) =>
        dictionary.Word("Type") is not { } type
            ? null
            : type + (type is "/StructElem" ? "" : dictionary.Word("Subtype") ?? dictionary.Word("S"));

    /// <summary>One set of data, one signature at most, and what belongs to it.</summary>
    private static IEnumerable<string> OfCatalog(PdfSource source)
    {
        var kinds = source
            .Objects.Where(o => o.Body.Span.StartsWith("<<"u8))
            .Select(o => RoleOf(o.Dictionary()))
            .OfType<string>()
            .CountBy(k => k, StringComparer.Ordinal)
            .ToDictionary(StringComparer.Ordinal);
        if (
            kinds.GetValueOrDefault("/Filespec") is not (0 or 3)
            || kinds.GetValueOrDefault("/EmbeddedFile/application#2Fjson") is not (0 or 3)
        )
            yield return "it holds more data than the three files that a document has";
        if (
            kinds.GetValueOrDefault("/Annot/Widget") > 1
            || kinds.GetValueOrDefault("/Sig") > 1
            || kinds.GetValueOrDefault("/XObject/Form") > kinds.GetValueOrDefault("/Annot/Widget")
        )
            yield return "it holds more fields than one for a signature";
        if (kinds.GetValueOrDefault("/Page") != PageTree.Of(source).Count || kinds.GetValueOrDefault("/Catalog") != 1)
            yield return "it holds pages that are not among its own";
        if (
            source.Objects.Any(o =>
                o.Body.Span.IndexOf("/Subtype /Form"u8) >= 0
                && o.Body.Span.IndexOf("/XObject"u8) >= 0
                && o.Dictionary().Number("Length") != 0
            )
        )
            yield return "it draws over its signature";
    }
}
