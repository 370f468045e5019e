using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Comparing;

/// <summary>
/// Holds a file against the same document printed a second time: object by object they must be the same, but for the time of
/// printing and the signature itself. So every mark of every page is compared, and every letter's shape.
/// </summary>
public static partial class SameFile
{
    private const int MostBytes = 64 * 1024 * 1024;

    /// <param name="given">The file in question.</param>
    /// <param name="remade">The same document, printed and finished a second time.</param>
    /// <returns>What differs, a few words each; empty where nothing does.</returns>
    /// <exception cref="PdfSyntaxException">One of them was not finished here.</exception>
    public static IReadOnlyList<FileDifference> Differences(byte[] given, byte[] remade)
    {
        var (ours, theirs) = (Objects(remade), Objects(given));
        return
        [
            .. ours
                .Keys.Union(theirs.Keys)
                .Order()
                .Where(n => !Same(ours.GetValueOrDefault(n), theirs.GetValueOrDefault(n)))
                .Select(n => Difference(ours.GetValueOrDefault(n) ?? theirs[n], n)),
        ];
    }

    /// <summary>
    /// Whether both were printed by the same browser with the same fonts, so that they must be the same in all. Any one font
    /// in common shows it: which letters of a font are in a file depends on its text.
    /// </summary>
    /// <inheritdoc cref="Differences"/>
    public static bool AreOfOneKindOfComputer(byte[] given, byte[] remade)
    {
        var (theirs, ours) = (PdfSource.Read(given), PdfSource.Read(remade));
        var fonts = Fonts(ours);
        return string.Equals(Producer(theirs), Producer(ours), StringComparison.Ordinal)
            && (fonts.Count == 0 || Fonts(theirs) is { Count: 0 } || Fonts(theirs).Overlaps(fonts));
    }

    private static string? Producer(PdfSource source) => source.Object(source.Trailer.Reference("Info")).Dictionary().Word("Producer");

    private static HashSet<string> Fonts(PdfSource source) =>
        source
            .Objects.Where(o => o.Body.Span.StartsWith("<<"u8) && o.Dictionary().Has("Length1"))
            .Select(o => Convert.ToHexString(SHA256.HashData(o.Stream(MostBytes))))
            .ToHashSet(StringComparer.Ordinal);

    private static Dictionary<int, Normal> Objects(byte[] pdf) => PdfSource.Read(pdf).Objects.ToDictionary(o => o.Number, Read);

    private static bool Same(Normal? one, Normal? other) =>
        one is not null
        && other is not null
        && string.Equals(one.Entries, other.Entries, StringComparison.Ordinal)
        && one.Stream.AsSpan().SequenceEqual(other.Stream);

    private static FileDifference Difference(Normal what, int number) =>
        new(
            what.Kind,
            string.Create(CultureInfo.InvariantCulture, $"{(what.Kind.Length == 0 ? "an object" : what.Kind)} (object {number})")
        );

    private static Normal Read(PdfObject o)
    {
        if (!o.Body.Span.StartsWith("<<"u8))
            return new Normal("", Encoding.Latin1.GetString(o.Body.Span), []);
        var dictionary = o.Dictionary();
        var kind = KindOf(dictionary);
        var isStream = new PdfLexer(o.Body.Span, dictionary.End) is var lexer && lexer.Next();
        var stream = isStream ? Content(o, dictionary) : [];
        if (string.Equals(kind, "metadata", StringComparison.Ordinal))
            stream = Encoding.UTF8.GetBytes(Moment().Replace(Encoding.UTF8.GetString(stream), ""));
        var entries = dictionary
            .Entries.Where(e => !(isStream && e.Name is "Length"))
            .Select(e => $"{e.Name} {Value(kind, e.Name, e.Value)}");
        return new Normal(kind, string.Join('\n', entries), stream);
    }

    private static byte[] Content(PdfObject o, PdfDictionary dictionary) =>
        dictionary.Word("Filter") is null or "/FlateDecode" ? o.Stream(MostBytes) : o.Body.Span[dictionary.End..].ToArray();

    private static string Value(string kind, string name, ReadOnlyMemory<byte> value)
    {
        var text = Encoding.Latin1.GetString(value.Span);
        return (kind, name) switch
        {
            ("facts", "CreationDate" or "ModDate") or ("signature", "Contents" or "ByteRange" or "M") => "",
            ("data", "Params") => Moment().Replace(text, ""),
            _ => text,
        };
    }

    private static string KindOf(PdfDictionary dictionary) =>
        dictionary.Word("Type") switch
        {
            "/Sig" => "signature",
            "/EmbeddedFile" => "data",
            "/Metadata" => "metadata",
            "/Font" or "/FontDescriptor" => "font",
            "/Page" => "page",
            null when dictionary.Has("Producer") => "facts",
            null when dictionary.Has("Length1") => "font",
            { } type => type.TrimStart('/'),
            _ => "",
        };

    /// <summary>A time as PDF or as XMP writes it.</summary>
    [GeneratedRegex(@"\(D:[0-9]{14}[+\-Z0-9']*\)|[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:]{8}[+\-Z0-9:]*", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Moment();

    private sealed record Normal(string Kind, string Entries, byte[] Stream);
}

/// <summary>One object that is not the same in both files.</summary>
/// <param name="Kind">What it is: font, facts, page and so on; empty where it does not say.</param>
/// <param name="Words">The same for people.</param>
public sealed record FileDifference(string Kind, string Words);
