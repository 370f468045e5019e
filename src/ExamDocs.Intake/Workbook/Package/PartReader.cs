using System.Xml;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>
/// Reads one part forwards, a node at a time, and never builds a tree of it: no recursion, no external entity, no DTD.
/// </summary>
internal sealed class PartReader : IDisposable
{
    private readonly XmlReader _xml;
    private readonly char[] _chunk = new char[4096];

    /// <param name="part">The part as its package opens it, guarded.</param>
    public PartReader(Stream part) => _xml = GuardedXml.Open(part, keepAll: false);

    public int Depth => _xml.Depth;

    /// <summary>True at an element's start tag, which may be empty.</summary>
    public bool AtStart => _xml.NodeType is XmlNodeType.Element;

    public bool AtEnd => _xml.NodeType is XmlNodeType.EndElement;

    public bool IsEmptyElement => _xml.IsEmptyElement;

    /// <summary>Element name without its prefix: transitional and strict files differ in namespaces only.</summary>
    public string Name => _xml.LocalName;

    public bool Is(string name) => string.Equals(_xml.LocalName, name, StringComparison.Ordinal);

    /// <summary>Steps to the next node of any kind.</summary>
    /// <returns>False at the end of the part.</returns>
    public bool Read() => _xml.Step();

    public string? Attribute(string name)
    {
        var value = _xml.GetAttribute(name);
        return value is null || value.Length <= WorkbookLimits.TextLength
            ? value
            : throw new UnreadableWorkbookException("The workbook holds a text longer than any cell can hold.");
    }

    /// <summary>The relationship id, whichever prefix and namespace the file gives it.</summary>
    public string? RelationshipId()
    {
        string? found = null;
        while (_xml.MoveToNextAttribute())
        {
            if (string.Equals(_xml.LocalName, "id", StringComparison.Ordinal) && _xml.Prefix.Length > 0)
                found = _xml.Value;
        }
        _xml.MoveToElement();
        return found;
    }

    /// <summary>Adds the text of the node just read, where it is one.</summary>
    public void AppendText(System.Text.StringBuilder text)
    {
        if (_xml.NodeType is not (XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace))
            return;
        for (int read; (read = _xml.ReadValueChunk(_chunk, 0, _chunk.Length)) > 0;)
        {
            text.Append(_chunk, 0, read);
            if (text.Length > WorkbookLimits.TextLength)
                throw new UnreadableWorkbookException("The workbook holds a text longer than any cell can hold.");
        }
    }

    public void Dispose() => _xml.Dispose();
}
