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
    // PDF/A wants every schema that it does not know itself described in the file (ISO 19005-3, 6.6.2.3).
    private const string AccessibleSchema = """
        <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"><pdfuaid:part>1</pdfuaid:part></rdf:Description>
        <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
        <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema><pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI><pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
        <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource"><pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType><pdfaProperty:category>internal</pdfaProperty:category><pdfaProperty:description>Part of ISO 14289 that the file meets</pdfaProperty:description></rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas></rdf:Description>
        """;

    public byte[] Bytes() =>
        Encoding.UTF8.GetBytes(
            $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"><pdfaid:part>3</pdfaid:part><pdfaid:conformance>{(
                IsAccessible ? "A" : "U"
            )}</pdfaid:conformance></rdf:Description>
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:format>application/pdf</dc:format><dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Text(
                Title
            )}</rdf:li></rdf:Alt></dc:title><dc:language><rdf:Bag><rdf:li>{Text(
                Language
            )}</rdf:li></rdf:Bag></dc:language></rdf:Description>
            <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"><xmp:CreatorTool>{Text(
                Creator
            )}</xmp:CreatorTool><xmp:CreateDate>{Created}</xmp:CreateDate><xmp:ModifyDate>{Created}</xmp:ModifyDate><xmp:MetadataDate>{Created}</xmp:MetadataDate><pdf:Producer>{Text(
                Producer
            )}</pdf:Producer></rdf:Description>
            {(IsAccessible ? AccessibleSchema : "")}
            </rdf:RDF></x:xmpmeta>
            <?xpacket end="r"?>
            """
        );

    private static string Text(string text) => SecurityElement.Escape(text)!;
}
