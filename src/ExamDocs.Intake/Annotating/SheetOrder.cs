namespace ExamDocs.Intake.Annotating;

/// <summary>
/// The order of a sheet's children: what may stand after the link to the drawing of its notes. Everything else stands
/// before it. Source: ECMA-376 1st ed. Part 4, worksheet.
/// </summary>
internal static class SheetOrder
{
    private static readonly HashSet<string> After = new(StringComparer.Ordinal)
    {
        "legacyDrawingHF",
        "drawingHF",
        "picture",
        "oleObjects",
        "controls",
        "webPublishItems",
        "tableParts",
        "extLst",
        // Controls are written within one of these, as something that older programs may pass over.
        "AlternateContent",
    };

    public static bool ComesAfterNotes(string name) => After.Contains(name);
}
