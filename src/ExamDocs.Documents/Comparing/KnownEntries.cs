using System.Collections.Frozen;

namespace ExamDocs.Documents.Comparing;

/// <summary>
/// The entries that objects of our documents have, by what they are. Taken from all documents of the example, signed and
/// unsigned, in three languages, with photos and a letterhead; a test holds both against each other.
/// </summary>
internal static class KnownEntries
{
    private const string Stream = "Length Filter";

    private static readonly FrozenDictionary<string, FrozenSet<string>> ByRole = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["trailer"] = "Size Root Info ID",
        ["/Catalog"] =
            "AF Lang MarkInfo Metadata Names Outlines OutputIntents Pages StructTreeRoot Type ViewerPreferences AcroForm Perms Dests",
        ["/Pages"] = "Count Kids Type Parent",
        ["/Page"] = "Contents MediaBox Parent Resources StructParents Tabs Type Annots",
        ["/Annot/Widget"] = "F FT P Rect StructParent Subtype T TU Type V AP",
        ["/Sig"] = "ByteRange Contents Filter M Name Reference SubFilter Type",
        ["/SigRef"] = "TransformMethod TransformParams Type",
        ["/TransformParams"] = "P Type V",
        ["/Filespec"] = "AFRelationship Desc EF F Type UF",
        ["/EmbeddedFile/application#2Fjson"] = $"{Stream} Params Subtype Type",
        ["/Metadata/XML"] = "Length Subtype Type",
        ["/OutputIntent/GTS_PDFA1"] = "DestOutputProfile Info OutputConditionIdentifier S Type",
        ["/Font/Type0"] = "BaseFont DescendantFonts Encoding Subtype ToUnicode Type",
        ["/Font/CIDFontType2"] = "BaseFont CIDSystemInfo CIDToGIDMap DW FontDescriptor Subtype Type W",
        ["/FontDescriptor"] = "Ascent CapHeight Descent Flags FontBBox FontFile2 FontName ItalicAngle StemV Type",
        ["/XObject/Image"] = $"{Stream} Type Subtype Width Height ColorSpace BitsPerComponent ColorTransform SMask",
        ["/XObject/Form"] = "BBox Length Subtype Type",
        ["/Pattern"] = "Matrix PatternType Shading Type",
        ["/StructTreeRoot"] = "IDTree K ParentTree ParentTreeNextKey Type",
        ["/StructElem"] = "K Lang P S Type Pg Alt A ID",
        ["/ParentTree"] = "Nums Type",
        ["/MCR"] = "MCID Pg Type",
        ["/OBJR"] = "Obj Pg Type",
        ["/Outlines"] = "Count First Last Type",
        ["/MarkInfo"] = "Marked Type",
        ["/ViewerPreferences"] = "DisplayDocTitle Type",
        ["in Names"] = "EmbeddedFiles",
        ["in EmbeddedFiles"] = "Names",
        ["in Resources"] = "ExtGState Font ProcSet Pattern XObject",
        ["in AcroForm"] = "Fields SigFlags",
        ["in Perms"] = "DocMDP",
        ["in AP"] = "N",
        ["in EF"] = "F UF",
        ["in Params"] = "CheckSum ModDate Size",
        ["in CIDSystemInfo"] = "Ordering Registry Supplement",
        ["in A"] = "O Scope RowSpan ColSpan Headers ListNumbering",
        ["in Shading"] = "ColorSpace Coords Extend Function ShadingType",
        ["in Function"] = "C0 C1 Domain FunctionType N",
        // Objects that do not say what they are: the facts of the file, settings of drawing, outline, tables of names, packed data.
        ["stream"] = $"{Stream} Length1 N",
        ["facts"] = "CreationDate Creator ModDate Producer Title",
        ["settings"] = "BM ca CA LC LJ LW ML SA",
        ["outline"] = "Title Count Dest First Last Parent SE Next Prev",
        ["names"] = "Limits Names Kids",
        ["places"] = "signature",
    }.ToFrozenDictionary(e => e.Key, e => e.Value.Split(' ').ToFrozenSet(StringComparer.Ordinal), StringComparer.Ordinal);

    private static readonly string[] Untyped = ["facts", "settings", "outline", "names", "places"];

    /// <summary>Entries that have one value alone wherever they stand.</summary>
    public static FrozenDictionary<string, string> Values { get; } =
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["ca"] = "1",
            ["CA"] = "1",
            ["BM"] = "/Normal",
            ["Encoding"] = "/Identity-H",
            ["CIDToGIDMap"] = "/Identity",
            ["PatternType"] = "2",
            ["Tabs"] = "/S",
            ["FT"] = "/Sig",
            ["AFRelationship"] = "/Data",
            ["SigFlags"] = "3",
            ["TransformMethod"] = "/DocMDP",
            ["DisplayDocTitle"] = "true",
            ["Marked"] = "true",
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Whether a dictionary has only entries that one of its kind has.</summary>
    /// <param name="role">What it is; null where it does not say so.</param>
    /// <param name="names">Of its entries.</param>
    public static bool Allows(string? role, IReadOnlyCollection<string> names) =>
        role is null
            ? Untyped.Any(u => ByRole[u].IsSupersetOf(names))
            : ByRole.TryGetValue(role, out var known) && known.IsSupersetOf(names);
}
