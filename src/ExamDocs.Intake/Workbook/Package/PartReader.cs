using System.Xml;

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
    public System.Text.StringBuilder Buffer { get; } = new();

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

    public string? Attribute(string name) => Bounded(_xml.GetAttribute(name));

    /// <summary>What a cell says of itself, in one walk over its attributes: there are more cells than anything else.</summary>
    public (string? Address, string? Type, string? Style) CellAttributes()
    {
        (string? Address, string? Type, string? Style) found = default;
        while (_xml.MoveToNextAttribute())
        {
            switch (_xml.Name)
            {
                case "r": found.Address = Bounded(_xml.Value); break;
                case "t": found.Type = Bounded(_xml.Value); break;
                case "s": found.Style = Bounded(_xml.Value); break;
                default: break;
            }
        }
        _xml.MoveToElement();
        return found;
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
        // No node is longer than what may lie between two tags.
        text.Append(_xml.Value);
        if (text.Length > WorkbookLimits.TextLength)
            throw TooLong();
    }

    private static string? Bounded(string? value) => value is null || value.Length <= WorkbookLimits.TextLength ? value : throw TooLong();

    private static UnreadableWorkbookException TooLong() => new("The workbook holds a text longer than any cell can hold.");

    public void Dispose() => _xml.Dispose();
}
