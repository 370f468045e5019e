using System.Xml;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// Copies a part node by node, and holds no more of it than the names of the elements that are open. Derived classes
/// say what is written in between.
/// </summary>
/// <remarks>Longer than other types: it is one walk, and each kind of node with the calls around it is a step of that.</remarks>
internal abstract class PartPatch
{
    private readonly List<string> _open = [];
    private XmlReader? _source;
    private XmlWriter? _target;

    /// <summary>Nodes read so far.</summary>
    public long Nodes { get; private set; }

    protected XmlReader Source => _source!;

    protected XmlWriter Target => _target!;

    /// <summary>Elements that are open; while a start tag is looked at, those around it.</summary>
    protected int Depth => _open.Count;

    /// <summary>Name of the innermost open element; empty at the root.</summary>
    protected string Parent => _open.Count == 0 ? "" : _open[^1];

    /// <summary>Prefix and namespace of the root, which our own elements take over.</summary>
    protected (string Prefix, string Namespace) Root { get; private set; }

    /// <param name="source">The part; it is closed.</param>
    /// <param name="target">Where the copy goes; it is left open.</param>
    public void Run(Stream source, Stream target)
    {
        using (_source = GuardedXml.Open(source, keepAll: true))
        using (_target = PartWriter.Open(target))
        {
            while (_source.Step())
            {
                Nodes++;
                Copy();
            }
        }
    }

    /// <summary>Before a start tag is written.</summary>
    protected virtual void BeforeStart(string name) { }

    /// <summary>Attributes to be set on the element about to be written, by their local names.</summary>
    protected virtual IReadOnlyList<KeyValuePair<string, string>> Attributes(string name) => [];

    /// <summary>Whether an element is left out with all that is in it; the source stands at its start.</summary>
    protected virtual bool IsLeftOut(string name) => false;

    /// <summary>A text of the innermost open element as it is to be written.</summary>
    protected virtual string Changed(string text) => text;

    /// <summary>Text of the innermost open element.</summary>
    protected virtual void Text(string text) { }

    /// <summary>Before an end tag is written; the element is still open.</summary>
    protected virtual void BeforeEnd(string name) { }

    /// <summary>After an end tag is written.</summary>
    protected virtual void AfterEnd(string name) { }

    /// <summary>Begins an element of our own.</summary>
    protected void Begin(string name) => Target.WriteStartElement(Root.Prefix, name, Root.Namespace);

    protected void End() => Target.WriteEndElement();

    private void Copy()
    {
        if (Source.NodeType is XmlNodeType.Element && IsLeftOut(Source.LocalName))
            Skip();
        else if (Source.NodeType is XmlNodeType.Element)
            CopyStart();
        else if (Source.NodeType is XmlNodeType.EndElement)
            CopyEnd(Source.LocalName);
        else
            CopyOther();
    }

    private void Skip()
    {
        var (depth, empty) = (Source.Depth, Source.IsEmptyElement);
        while (!empty && Source.Step() && !(Source.NodeType is XmlNodeType.EndElement && Source.Depth == depth))
            Nodes++;
    }

    private void CopyStart()
    {
        var (name, empty) = (Source.LocalName, Source.IsEmptyElement);
        if (Depth == 0)
            Root = (Source.Prefix, Source.NamespaceURI);
        BeforeStart(name);
        var changes = Attributes(name);
        Target.WriteStartElement(Source.Prefix, name, Source.NamespaceURI);
        CopyAttributes(changes);
        _open.Add(name);
        if (empty)
            CopyEnd(name);
    }

    private void CopyEnd(string name)
    {
        BeforeEnd(name);
        _open.RemoveAt(_open.Count - 1);
        Target.WriteEndElement();
        AfterEnd(name);
    }

    private void CopyAttributes(IReadOnlyList<KeyValuePair<string, string>> changes)
    {
        var left = changes.ToList();
        while (Source.MoveToNextAttribute())
        {
            var at = left.FindIndex(c => IsAttribute(c.Key));
            Target.WriteStartAttribute(Source.Prefix, Source.LocalName, Source.NamespaceURI);
            Target.WriteString(at < 0 ? Source.Value : left[at].Value);
            Target.WriteEndAttribute();
            if (at >= 0)
                left.RemoveAt(at);
        }
        Source.MoveToElement();
        foreach (var (name, value) in left)
            Target.WriteAttributeString(name, value);
    }

    /// <summary>Attributes of the format have no prefix; links to other parts are the exception.</summary>
    private bool IsAttribute(string name) =>
        string.Equals(Source.LocalName, name, StringComparison.Ordinal) && (Source.Prefix.Length == 0 || name is "id");

    private void CopyOther()
    {
        switch (Source.NodeType)
        {
            case XmlNodeType.XmlDeclaration:
                Declare(Source.GetAttribute("standalone"));
                break;
            case XmlNodeType.Text or XmlNodeType.SignificantWhitespace:
                Text(Source.Value);
                Target.WriteString(Changed(Source.Value));
                break;
            case XmlNodeType.CDATA:
                Text(Source.Value);
                Target.WriteCData(Changed(Source.Value));
                break;
            case XmlNodeType.Whitespace:
                Text(Source.Value);
                Target.WriteWhitespace(Source.Value);
                break;
            case XmlNodeType.Comment:
                Target.WriteComment(Source.Value);
                break;
            case XmlNodeType.ProcessingInstruction:
                Target.WriteProcessingInstruction(Source.Name, Source.Value);
                break;
        }
    }

    private void Declare(string? standalone)
    {
        if (standalone is null)
            Target.WriteStartDocument();
        else
            Target.WriteStartDocument(standalone is "yes");
    }
}
