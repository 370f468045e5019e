using System.Xml;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>
/// Reads one part forwards, a node at a time, and never builds a tree of it: no recursion, no external entity, no DTD.
/// </summary>
internal sealed class PartReader : IDisposable
{
    private readonly XmlReader _xml;

    /// <param name="part">The part as its package opens it, guarded.</param>
    public PartReader(Stream part) => _xml = GuardedXml.Open(part, keepAll: false);

    /// <summary>To put a text together in, one at a time.</summary>
    public GatheredText Text { get; } = new();

    public int Depth => _xml.Depth;

    /// <summary>The node that the reader stands at, or whose attributes it walks.</summary>
    public XmlNodeType Node { get; private set; }

    /// <summary>True at an element's start tag, which may be empty.</summary>
    public bool AtStart => Node is XmlNodeType.Element;

    public bool AtEnd => Node is XmlNodeType.EndElement;

    public bool IsEmptyElement => _xml.IsEmptyElement;

    /// <summary>Element name without its prefix: transitional and strict files differ in namespaces only.</summary>
    public string Name => _xml.LocalName;

    public bool Is(string name) => string.Equals(_xml.LocalName, name, StringComparison.Ordinal);

    /// <summary>Steps to the next node of any kind.</summary>
    /// <returns>False at the end of the part.</returns>
    public bool Read()
    {
        var read = _xml.Step();
        Node = _xml.NodeType;
        return read;
    }

    public string? Attribute(string name) => Bounded(_xml.GetAttribute(name));

    /// <summary>
    /// Steps to the element's next attribute, whose value is then <see cref="Value"/>; back to the element after the last.
    /// </summary>
    /// <returns>Its name with its prefix; null after the last.</returns>
    public string? NextAttribute()
    {
        if (_xml.MoveToNextAttribute())
            return _xml.Name;
        _xml.MoveToElement();
        return null;
    }

    public string Value => Bounded(_xml.Value)!;

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
    /// <returns>Whether there was more to add than blanks.</returns>
    public bool AppendText(GatheredText text)
    {
        // No node is longer than what may lie between two tags.
        if (Node is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace)
            text.Add(_xml.Value);
        return Node is XmlNodeType.Text or XmlNodeType.CDATA;
    }

    private static string? Bounded(string? value) => value is null || value.Length <= WorkbookLimits.TextLength ? value : throw TooLong();

    internal static UnreadableWorkbookException TooLong() => new("The workbook holds a text longer than any cell can hold.");

    public void Dispose() => _xml.Dispose();
}
