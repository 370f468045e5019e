using System.Globalization;

namespace ExamDocs.Intake.Annotating;

/// <summary>Names one more sheet after the last tab.</summary>
internal sealed class WorkbookPatch(string name, long sheetId, string linkId, string links) : PartPatch
{
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
