using System.Globalization;
using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Signing;

/// <summary>
/// The field of a signature in a file that is about to be written (ISO 32000-1, 12.7.4.5): its form, the place on the page
/// that a viewer shows it at, its tag, and the word that nothing may be changed after it.
/// </summary>
internal sealed class SignatureField(PdfSource source, PdfTarget target, PdfDictionary catalog)
{
    /// <summary>The name that a page's link has whose place the field takes.</summary>
    public const string LinkName = "signature";

    /// <summary>Print, Locked (ISO 32000-1, table 165); PDF/A wants the first (ISO 19005-3, 6.3.2).</summary>
    private const int Flags = 4 + 128;

    /// <param name="name">Whose signature is to come.</param>
    /// <param name="room">Bytes for the signature.</param>
    /// <param name="date">The signing time that is claimed, as PDF writes it.</param>
    /// <param name="description">What a reading program calls the field.</param>
    /// <returns>The number of the object that the signature goes into.</returns>
    public int Add(string name, int room, string date, string description)
    {
        var signature = target.Add(
            $"<</Type /Sig\n/Filter /Adobe.PPKLite\n/SubFilter /ETSI.CAdES.detached\n/M {date}\n/Name {PdfText.Write(name)}\n"
                + "/Reference [<</Type /SigRef\n/TransformMethod /DocMDP\n/TransformParams <</Type /TransformParams\n/P 1\n/V /1.2>>>>]\n"
                + $"{SignaturePlace.Empty(room)}>>"
        );
        var entries = string.Create(
            CultureInfo.InvariantCulture,
            $"/Type /Annot\n/Subtype /Widget\n/FT /Sig\n/T (Signature)\n/TU {PdfText.Write(description)}\n/F {Flags}\n/V {signature} 0 R\n"
        );
        var field = OnBlock(entries) ?? OutOfSight(entries);
        catalog.Set("AcroForm", string.Create(CultureInfo.InvariantCulture, $"<</Fields [{field} 0 R]\n/SigFlags 3>>"));
        catalog.Set("Perms", string.Create(CultureInfo.InvariantCulture, $"<</DocMDP {signature} 0 R>>"));
        return signature;
    }

    /// <summary>The page has a link over its block for the signature, tagged already: the field takes its place and its tag.</summary>
    /// <returns>The number of the field; null where there is no such link.</returns>
    private int? OnBlock(string entries)
    {
        foreach (var page in PageTree.Of(source))
        {
            foreach (var number in page.Annotations)
            {
                var link = source.Object(number).Dictionary();
                if (
                    !string.Equals(link.Word("Dest"), "/" + LinkName, StringComparison.Ordinal)
                    || link.Word("Rect") is not { } rect
                    || link.Word("StructParent") is not { } parent
                )
                    continue;
                var tag = source.Objects.First(o => IsTagOf(o, number));
                target.Replace(tag.Number, tag.Dictionary().Set("S", "/Form").Bytes());
                var place = string.Create(
                    CultureInfo.InvariantCulture,
                    $"/Rect {rect}\n/P {page.Number} 0 R\n/StructParent {parent}\n/AP <</N {Appearance(rect)} 0 R>>"
                );
                target.Replace(number, Encoding.Latin1.GetBytes($"<<{entries}{place}>>"));
                return number;
            }
        }
        return null;
    }

    private static bool IsTagOf(PdfObject o, int annotation) =>
        o.Body.Span.IndexOf("/OBJR"u8) >= 0
        && o.Dictionary().Find("K") is { Span: [(byte)'<', (byte)'<', ..] } inner
        && PdfDictionary.Read(inner).Reference("Obj") == annotation;

    /// <summary>
    /// Nothing is drawn: the block says in words what there is to say. A field that has a place must have an appearance (ISO 19005-3,
    /// 6.3.3).
    /// </summary>
    private int Appearance(string rect)
    {
        var n = rect.Trim('[', ']')
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(v => PdfNumber.Real(Encoding.ASCII.GetBytes(v)) ?? 0)
            .ToList();
        return n.Count == 4
            ? target.Add(
                PdfTarget.PlainStream(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"/Type /XObject\n/Subtype /Form\n/BBox [0 0 {n[2] - n[0]:0.##} {n[3] - n[1]:0.##}]\n"
                    ),
                    []
                )
            )
            : throw new PdfSyntaxException("a link has no place");
    }

    /// <summary>A field without a place, on the first page, with a tag of its own at the end of the document.</summary>
    private int OutOfSight(string entries)
    {
        var page = PageTree.Of(source)[0];
        var tags = TagRoot.Of(source, catalog);
        var field = target.Add("");
        var place = string.Create(CultureInfo.InvariantCulture, $"/Rect [0 0 0 0]\n/P {page.Number} 0 R\n{tags?.StructParent}");
        target.Replace(field, Encoding.Latin1.GetBytes($"<<{entries}{place}>>"));
        tags?.Append(target, field, page.Number);
        var list = string.Join(' ', page.Annotations.Append(field).Select(a => string.Create(CultureInfo.InvariantCulture, $"{a} 0 R")));
        target.Replace(page.Number, source.Object(page.Number).Dictionary().Set("Annots", $"[{list}]").Set("Tabs", "/S").Bytes());
        return field;
    }
}
