namespace ExamDocs.Intake;

/// <summary>Where rules of reading come from, for those that share a source.</summary>
internal static class RuleSources
{
    public const string Practice = "common practice, no source";

    public const string CaptureWorkbook = "capture workbook, sheet \"How to fill this in\"";

    public const string DateSerials = "ECMA-376 1st ed. Part 4, Date Representation";

    public const string MergedCells = "ECMA-376 1st ed. Part 4, merged cells";
}
