namespace ExamDocs.Intake.Annotating;

/// <summary>The names of the format's two dialects: transitional, which most programs write, and strict.</summary>
internal sealed record FormatNames(string Main, string Links)
{
    private static readonly FormatNames Transitional = new(
        "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
        "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
    );

    private static readonly FormatNames Strict = new(
        "http://purl.oclc.org/ooxml/spreadsheetml/main",
        "http://purl.oclc.org/ooxml/officeDocument/relationships"
    );

    /// <summary>The dialect that the workbook's root element is written in.</summary>
    public static FormatNames Of(string rootNamespace) =>
        string.Equals(rootNamespace, Strict.Main, StringComparison.Ordinal) ? Strict : Transitional;

    public string Link(string kind) => $"{Links}/{kind}";
}
