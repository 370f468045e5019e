using System.Globalization;
using System.Runtime.InteropServices;
using System.Xml;

namespace ExamDocs.Intake.Annotating;

/// <summary>A cell style as the file has it, kept to be written a second time with a fill of ours.</summary>
internal sealed class CopiedStyle
{
    /// <summary>Where a file has no styles, its cells have this one.</summary>
    private static readonly Attribute[] None = [new("", "numFmtId", "", "0"), new("", "fontId", "", "0"), new("", "borderId", "", "0")];

    private readonly List<Attribute> _attributes = [];
    private readonly List<(string Name, List<Attribute> Attributes)> _children = [];

    public void TakeAttributes(XmlReader source) => Take(source, _attributes);

    /// <summary>Takes the alignment or protection that the reader stands at.</summary>
    public void TakeChild(XmlReader source)
    {
        var attributes = new List<Attribute>();
        Take(source, attributes);
        _children.Add((source.LocalName, attributes));
    }

    public void Write(Action<string> begin, XmlWriter target, int fill)
    {
        begin("xf");
        foreach (
            var attribute in (_attributes.Count == 0 ? None : _attributes.AsEnumerable()).Where(a =>
                a.Prefix.Length > 0 || a.Name is not ("fillId" or "applyFill")
            )
        )
            attribute.Write(target);
        target.WriteAttributeString("fillId", fill.ToString(CultureInfo.InvariantCulture));
        target.WriteAttributeString("applyFill", "1");
        foreach (var (name, attributes) in _children)
        {
            begin(name);
            attributes.ForEach(a => a.Write(target));
            target.WriteEndElement();
        }
        target.WriteEndElement();
    }

    private static void Take(XmlReader source, List<Attribute> into)
    {
        while (source.MoveToNextAttribute())
        {
            if (!string.Equals(source.NamespaceURI, "http://www.w3.org/2000/xmlns/", StringComparison.Ordinal))
                into.Add(new(source.Prefix, source.LocalName, source.NamespaceURI, source.Value));
        }
        source.MoveToElement();
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Attribute(string Prefix, string Name, string Namespace, string Value)
    {
        public void Write(XmlWriter target) => target.WriteAttributeString(Prefix, Name, Namespace, Value);
    }
}
