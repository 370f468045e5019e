using System.Xml;

namespace ExamDocs.Intake.Annotating;

/// <summary>Adds empty elements at the end of a part's root: links, or types of parts.</summary>
internal class AppendPatch(IReadOnlyList<NewElement> added) : PartPatch
{
    protected override void BeforeEnd(string name)
    {
        if (Depth != 1)
            return;
        foreach (var element in added)
        {
            Begin(element.Name);
            foreach (var (attribute, value) in element.Attributes)
                Target.WriteAttributeString(attribute, value);
            End();
        }
    }
}

/// <summary>An element without content.</summary>
internal sealed record NewElement(string Name, params (string Name, string Value)[] Attributes)
{
    public static NewElement Link(string id, string type, string part) =>
        new("Relationship", ("Id", id), ("Type", type), ("Target", "/" + part));

    public static NewElement PartType(string part, string type) => new("Override", ("PartName", "/" + part), ("ContentType", type));
}
