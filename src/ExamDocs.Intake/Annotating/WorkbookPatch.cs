using System.Globalization;

namespace ExamDocs.Intake.Annotating;

/// <summary>Names one more sheet after the last tab, and leaves out the links to other workbooks and what names take from them.</summary>
internal sealed class WorkbookPatch(string name, long sheetId, string linkId, string links) : PartPatch
{
    protected override bool IsLeftOut(string element) => Depth == 1 && element is "externalReferences";

    protected override string Changed(string text) => Parent is "definedName" && Reach.IsBeyond(text) ? Reach.Lost : text;

    protected override void BeforeEnd(string element)
    {
        if (Depth != 2 || element is not "sheets")
            return;
        Begin("sheet");
        Target.WriteAttributeString("name", name);
        Target.WriteAttributeString("sheetId", sheetId.ToString(CultureInfo.InvariantCulture));
        Target.WriteAttributeString("r", "id", links, linkId);
        End();
    }
}
