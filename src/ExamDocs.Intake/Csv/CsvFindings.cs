using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Csv;

/// <summary>What only files of separated values can have wrong with them; the rest is found as in any other input.</summary>
public static class CsvFindings
{
    public static readonly RuleInfo ReadAs = new(
        "INT040",
        Severity.Note,
        "A file of separated values was read as it seems to have been written",
        "Such a file says neither how its letters are encoded nor what separates its values; taken wrongly, names and "
            + "numbers come out wrong.",
        $"Look at the letters outside English; where they are wrong, save the file again as UTF-8.",
        "RFC 4180; Unicode Standard, byte order mark"
    );

    public static readonly RuleInfo UnknownFile = new(
        "INT041",
        Severity.Error,
        "Every file of the folder is a sheet that is known",
        "What is in an unknown file is not read, and it may be an answer or a danger.",
        $"Name the file as the sheet of the capture workbook, for example Rope bridges.csv, or take it out of the folder.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo FileNotRead = new(
        "INT072",
        Severity.Error,
        "No file of the folder that may hold a record is left unread",
        "Of a folder only the files of separated values in it are read; what a workbook, a document or another folder beside "
            + "them holds would count for nothing.",
        $"Give it as an input of its own, with the same visit reference; or take it out of the folder.",
        Folders
    );

    public static readonly RuleInfo OthersNotRead = new(
        "INT073",
        Severity.Note,
        "Files of a folder that hold no record are named",
        "They are not read, except for the photos that the record names.",
        $"Check whether one of them says something about the kit.",
        Folders
    );

    private const string Folders = "docs/record-format.md, files of separated values";

    public static IReadOnlyList<RuleInfo> All { get; } = [ReadAs, UnknownFile, FileNotRead, OthersNotRead];
}
