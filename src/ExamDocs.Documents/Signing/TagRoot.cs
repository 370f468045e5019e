using System.Globalization;
using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Signing;

/// <summary>The root of a file's tags, where one more can be appended (ISO 32000-1, 14.7.2).</summary>
internal sealed class TagRoot
{
    private readonly PdfSource _source;
    private readonly PdfObject _root;
    private readonly int _key;

    private TagRoot(PdfSource source, PdfObject root, int key) => (_source, _root, _key) = (source, root, key);

    /// <summary>What an object says that the next tag is about.</summary>
    public string StructParent => string.Create(CultureInfo.InvariantCulture, $"/StructParent {_key}\n");

    /// <returns>Null where the file has no tags.</returns>
    /// <exception cref="PdfSyntaxException">They are listed in another way than the browser does.</exception>
    public static TagRoot? Of(PdfSource source, PdfDictionary catalog) =>
        catalog.Reference("StructTreeRoot") is not { } number
            ? null
            : new TagRoot(source, source.Object(number), source.Object(number).Dictionary().Number("ParentTreeNextKey") ?? throw Unknown());

    /// <summary>Tags a form field at the end of the document.</summary>
    public void Append(PdfTarget target, int field, int page)
    {
        var root = _root.Dictionary();
        var (document, parents) = (_source.Object(root.Reference("K")), _source.Object(root.Reference("ParentTree")));
        var tag = target.Add(
            string.Create(
                CultureInfo.InvariantCulture,
                $"<</Type /StructElem\n/S /Form\n/P {document.Number} 0 R\n/K <</Type /OBJR\n/Obj {field} 0 R\n/Pg {page} 0 R>>>>"
            )
        );
        target.Replace(document.Number, Appended(document, "K", tag, ""));
        target.Replace(parents.Number, Appended(parents, "Nums", tag, string.Create(CultureInfo.InvariantCulture, $"{_key} ")));
        target.Replace(_root.Number, root.Set("ParentTreeNextKey", (_key + 1).ToString(CultureInfo.InvariantCulture)).Bytes());
    }

    private static byte[] Appended(PdfObject owner, string name, int tag, string before)
    {
        var dictionary = owner.Dictionary();
        var list = Encoding.Latin1.GetString((dictionary.Find(name) ?? throw Unknown()).Span);
        var inner = list.StartsWith('[') ? list[1..^1] : list;
        return dictionary.Set(name, string.Create(CultureInfo.InvariantCulture, $"[{inner} {before}{tag} 0 R]")).Bytes();
    }

    private static PdfSyntaxException Unknown() => new("its tags are listed in an unknown way");
}
