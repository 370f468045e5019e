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
    /// <exception cref="PdfSyntaxException">It is not a file that was finished here.</exception>
    public static IReadOnlyList<string> Faults(byte[] pdf)
    {
        var source = PdfSource.Read(pdf);
        List<string> found =
        [
            .. OfFile(source, pdf),
            .. KnownObjects.OfEntries("trailer", source.Trailer),
            .. source.Objects.SelectMany(KnownObjects.Of),
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
    /// Nothing stands between the objects, before or after them: written a second time, the file is the same but for its identifier.
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

    /// <summary>One set of data, one signature at most, and what belongs to it.</summary>
    private static IEnumerable<string> OfCatalog(PdfSource source)
    {
        var kinds = source
            .Objects.Where(o => o.Body.Span.StartsWith("<<"u8))
            .Select(o => KnownObjects.RoleOf(o.Dictionary()))
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
