namespace ExamDocs.Intake.Annotating;

/// <summary>The types of parts that we may add. Source: ECMA-376 1st ed. Part 1, and Part 4 for the drawing.</summary>
internal static class ContentTypes
{
    public const string Part = "[Content_Types].xml";

    public const string Sheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

    public const string Styles = "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";

    public const string Notes = "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml";

    public const string NoteBoxes = "application/vnd.openxmlformats-officedocument.vmlDrawing";
}
