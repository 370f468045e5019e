using System.Globalization;
using ExamDocs.Intake.Csv;

namespace ExamDocs.UseCases.Reading;

/// <summary>
/// A folder of workbooks is so many inputs, each a record of its own. One that holds anything else in which a record may be is
/// not read: nobody could tell whether it belongs to one of the workbooks.
/// </summary>
internal static class FolderOfWorkbooks
{
    /// <summary>Who has more in one folder gives them in parts.</summary>
    private const int Most = 200;

    private const int Named = 3;

    /// <summary>The workbooks of such a folder by their names; any other input as it is.</summary>
    public static IReadOnlyList<string> InputsOf(string path)
    {
        try
        {
            return Directory.Exists(path) && Look(path) is { WhyNot: null, Workbooks: var workbooks } ? workbooks : [path];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Reading it says why it cannot be read.
            return [path];
        }
    }

    /// <summary>Why a folder without files of separated values is not read; null where it is.</summary>
    public static string? WhyNot(string folder) => Look(folder).WhyNot;

    private static (IReadOnlyList<string> Workbooks, string? WhyNot) Look(string folder)
    {
        var found = UnreadFiles.Of(folder);
        // One that is empty is an input too, which is then refused; what a program lays beside an open workbook is none.
        List<UnreadFile> workbooks =
        [
            .. found.Where(f => IsWorkbook(f.Name) && (f.MayHoldRecord || !f.Name.StartsWith("~$", StringComparison.Ordinal))),
        ];
        List<UnreadFile> others = [.. found.Where(f => f.MayHoldRecord && !IsWorkbook(f.Name))];
        var csv = Directory.EnumerateFiles(folder).Any(ReadInput.IsCsv);
        return (
            [.. workbooks.Select(f => Path.Combine(folder, f.Name))],
            csv ? "it holds files of separated values"
            : workbooks.Count == 0 ? "there is no workbook (.xlsx) and no .csv file in the folder; give files of another kind one by one"
            : others.Count > 0 ? Beside(workbooks.Count, others)
            : workbooks.Count > Most ? "there are more than 200 workbooks in the folder; give them in parts"
            : null
        );
    }

    private static string Beside(int workbooks, List<UnreadFile> others) =>
        $"{Count(workbooks, "workbook")} in the folder, and beside {(workbooks == 1 ? "it" : "them")} what may hold a record too "
        + $"({Names(others)}): give the inputs one by one, or put the workbooks into a folder of their own";

    /// <summary>In the folder itself, not in one below it.</summary>
    private static bool IsWorkbook(string name) =>
        !name.Contains('/', StringComparison.Ordinal) && Path.GetExtension(name).ToLowerInvariant() is (".xlsx" or ".xlsm");

    private static string Names(List<UnreadFile> files) =>
        string.Join(", ", files.Take(Named).Select(f => f.Name))
        + (files.Count > Named ? string.Create(CultureInfo.InvariantCulture, $" and {files.Count - Named} more") : "");

    private static string Count(int number, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"there {(number == 1 ? "is" : "are")} {number} {what}{(number == 1 ? "" : "s")}");
}
