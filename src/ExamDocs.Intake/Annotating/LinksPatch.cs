using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>Adds links to a part of links, leaves out those to parts that are left out, and turns away what leaves the workbook.</summary>
internal sealed class LinksPatch(IReadOnlyList<NewElement> added) : AppendPatch(added)
{
    /// <summary>Nothing is fetched from there, and a click shows an empty page.</summary>
    private const string Nowhere = "about:blank";

    /// <summary>Whether a link, or what it leads to, does not belong into a copy that takes nothing from outside.</summary>
    public static bool IsChanged(Relationship link) =>
        IsOfPartLeftOut(link) || (link.External && !Reach.IsHarmless(link.Type, link.Target));

    /// <summary>Links to other workbooks, and the order in which formulas are calculated, which are no longer there.</summary>
    public static bool IsOfPartLeftOut(Relationship link) => !link.External && (link.IsOf("externalLink") || link.IsOf("calcChain"));

    protected override bool IsLeftOut(string name) => name is "Relationship" && IsOfPartLeftOut(Here);

    protected override IReadOnlyList<KeyValuePair<string, string>> Attributes(string name) =>
        name is "Relationship" && IsChanged(Here) ? [new("Target", Nowhere)] : [];

    private Relationship Here =>
        new(
            "",
            Source.GetAttribute("Type") ?? "",
            Source.GetAttribute("Target") ?? "",
            string.Equals(Source.GetAttribute("TargetMode"), "External", StringComparison.OrdinalIgnoreCase)
        );
}

/// <summary>Adds types of parts, and leaves out those of parts that are left out.</summary>
internal sealed class TypesPatch(IReadOnlyList<NewElement> added, IReadOnlySet<string> leftOut) : AppendPatch(added)
{
    protected override bool IsLeftOut(string name) =>
        name is "Override" && leftOut.Contains(WorkbookPackage.Normal(Source.GetAttribute("PartName") ?? ""));
}
