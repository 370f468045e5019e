using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>A row to write: what stands under which heading.</summary>
internal sealed class CaptureRow : Dictionary<string, SourceNode>
{
    public CaptureRow()
        : base(StringComparer.Ordinal) { }

    public void Put(string heading, SourceNode? node)
    {
        if (node is not null and not NullNode)
            this[heading] = node;
    }

    public void Put(string heading, string? text) => Put(heading, text is null ? null : new TextNode("", text));

    public void Fill(ObjectNode node, IEnumerable<Column> columns)
    {
        foreach (var column in columns)
            Put(column.Heading, node.Find(column.Path));
    }
}
