using System.Security;
using System.Text;

namespace ExamDocs.Documents.Finishing;

/// <summary>What a file says of itself in XMP (ISO 16684-1), the same as its information dictionary says.</summary>
/// <param name="Title">Title of the document.</param>
/// <param name="Language">For example en.</param>
/// <param name="Creator">The program that made the page.</param>
/// <param name="Producer">The program that made the PDF.</param>
/// <param name="Created">As XMP writes dates.</param>
/// <param name="IsAccessible">Whether it is said to meet PDF/UA-1 as well.</param>
internal sealed record XmpPacket(string Title, string Language, string Creator, string Producer, string Created, bool IsAccessible)
{
    private const string AccessibilityNamespace = "http://www.aiim.org/pdfua/ns/id/";

    /// <summary>PDF/A wants every schema that it does not know itself described in the file (ISO 19005-3, 6.6.2.3).</summary>
    private static readonly string AccessibleSchema = string.Join(
        '\n',
        Description(Namespace("pdfuaid", AccessibilityNamespace), Element("pdfuaid:part", "1")),
        Description(
            string.Join(
                ' ',
                Namespace("pdfaExtension", "http://www.aiim.org/pdfa/ns/extension/"),
                Namespace("pdfaSchema", "http://www.aiim.org/pdfa/ns/schema#"),
                Namespace("pdfaProperty", "http://www.aiim.org/pdfa/ns/property#")
            ),
            string.Join(
                '\n',
                "",
                "<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType=\"Resource\">",
                Element("pdfaSchema:schema", "PDF/UA identification")
                    + Element("pdfaSchema:namespaceURI", AccessibilityNamespace)
                    + Element("pdfaSchema:prefix", "pdfuaid"),
                "<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\">"
                    + Element("pdfaProperty:name", "part")
                    + Element("pdfaProperty:valueType", "Integer")
                    + Element("pdfaProperty:category", "internal")
                    + Element("pdfaProperty:description", "Part of ISO 14289 that the file meets")
                    + "</rdf:li></rdf:Seq></pdfaSchema:property>",
                "</rdf:li></rdf:Bag></pdfaExtension:schemas>"
            )
        )
    );

    public byte[] Bytes() =>
        Encoding.UTF8.GetBytes(
            string.Join(
                '\n',
                "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>",
                "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">",
                Archive,
                Facts,
                Dates,
                IsAccessible ? AccessibleSchema : "",
                "</rdf:RDF></x:xmpmeta>",
                "<?xpacket end=\"r\"?>"
            )
        );

    /// <summary>Part and level of PDF/A that the file meets.</summary>
    private string Archive =>
        Description(
            Namespace("pdfaid", "http://www.aiim.org/pdfa/ns/id/"),
            Element("pdfaid:part", "3") + Element("pdfaid:conformance", IsAccessible ? "A" : "U")
        );

    private string Facts =>
        Description(
            Namespace("dc", "http://purl.org/dc/elements/1.1/"),
            Element("dc:format", "application/pdf")
                + Element("dc:title", Element("rdf:Alt", $"<rdf:li xml:lang=\"x-default\">{Text(Title)}</rdf:li>"))
                + Element("dc:language", Element("rdf:Bag", Element("rdf:li", Text(Language))))
        );

    private string Dates =>
        Description(
            Namespace("xmp", "http://ns.adobe.com/xap/1.0/") + " " + Namespace("pdf", "http://ns.adobe.com/pdf/1.3/"),
            Element("xmp:CreatorTool", Text(Creator))
                + Element("xmp:CreateDate", Created)
                + Element("xmp:ModifyDate", Created)
                + Element("xmp:MetadataDate", Created)
                + Element("pdf:Producer", Text(Producer))
        );

    private static string Description(string namespaces, string content) =>
        $"<rdf:Description rdf:about=\"\" {namespaces}>{content}</rdf:Description>";

    private static string Namespace(string prefix, string name) => $"xmlns:{prefix}=\"{name}\"";

    private static string Element(string name, string content) => $"<{name}>{content}</{name}>";

    private static string Text(string text) => SecurityElement.Escape(text)!;
}
