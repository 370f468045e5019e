using System.Globalization;
using System.Text;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using PdfSharp.Pdf.IO;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>
/// Turns a label into solid black and white, for printers that have no colours and no greys: every shape and letter
/// stays where and what it is, only what it is filled and drawn with changes.
/// </summary>
public static class BlackInk
{
    /// <param name="label">A label as issued.</param>
    /// <returns>A copy of it for printing; not what was issued, which stays as it is.</returns>
    /// <exception cref="NotSupportedException">It holds something other than shapes and letters in plain colours.</exception>
    public static byte[] Only(byte[] label)
    {
        using var bytes = new MemoryStream(label);
        using var document = PdfReader.Open(bytes, PdfDocumentOpenMode.Modify);
        document.Options.CompressContentStreams = false;
        // What is printed differently from what was signed bears no signature.
        document.Internals.Catalog.Elements.Remove("/AcroForm");
        document.Internals.Catalog.Elements.Remove("/Perms");
        document.Pages[0].Elements.Remove("/Annots");
        // Asked for first: reading the contents puts other objects in their place.
        var contents = document.Pages[0].Contents.Elements.Items.Select(i => i is PdfReference r ? r.Value : i).ToHashSet();
        foreach (var found in document.Internals.GetAllObjects().OfType<PdfDictionary>())
        {
            Refuse(found);
            if (IsDrawing(found, contents))
                Turn(found);
        }
        using var result = new MemoryStream();
        document.Save(result, closeStream: false);
        return result.ToArray();
    }

    private static void Turn(PdfDictionary drawing)
    {
        var turned = ColourOperators.Blacken(Encoding.Latin1.GetString(drawing.Stream.UnfilteredValue));
        drawing.Elements.Remove("/Filter");
        drawing.Elements.Remove("/DecodeParms");
        drawing.Stream.Value = Encoding.Latin1.GetBytes(turned);
        drawing.Elements.SetInteger("/Length", drawing.Stream.Value.Length);
    }

    private static bool IsDrawing(PdfDictionary found, HashSet<PdfItem> contents) =>
        found.Stream is not null
        && (contents.Contains(found) || string.Equals(found.Elements.GetName("/Subtype"), "/Form", StringComparison.Ordinal));

    // What cannot be turned is refused: a grey or coloured spot would be lost on such a printer.
    private static void Refuse(PdfDictionary found)
    {
        var isPicture = string.Equals(found.Elements.GetName("/Subtype"), "/Image", StringComparison.Ordinal);
        var isPattern = found.Elements.ContainsKey("/PatternType") || found.Elements.ContainsKey("/ShadingType");
        if (isPicture || isPattern || IsSheer(found, "/ca") || IsSheer(found, "/CA"))
            throw new NotSupportedException(
                "the label holds a picture, a pattern or something sheer, and cannot be printed in black alone"
            );
    }

    private static bool IsSheer(PdfDictionary found, string key) =>
        found.Elements.ContainsKey(key)
        && found.Elements[key] is PdfReal or PdfInteger
        && found.Elements.GetReal(key).ToString(CultureInfo.InvariantCulture) is not "1";
}
