using System.Xml;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// Writes a copy of the user's own workbook in which each finding stands as a note on its cell and the cell is filled,
/// with a list of all findings as its last sheet. Results take the place of formulas, and nothing is taken from
/// outside the file any more. Nothing else of the workbook changes.
/// </summary>
public static class AnnotatedWorkbook
{
    /// <param name="source">The workbook, from its beginning; it is left open.</param>
    /// <param name="target">Where the copy is written; it is left open. What stands there is of use only where null is given back.</param>
    /// <param name="findings">What was found in it.</param>
    /// <param name="places">Where in it each place of the record was typed.</param>
    /// <param name="language">In which the notes and the list are written; English where it is left out.</param>
    /// <returns>One sentence saying why there is no copy; null where there is one.</returns>
    public static string? Write(
        Stream source,
        Stream target,
        IReadOnlyList<Finding> findings,
        SourceMap places,
        MessageLanguage? language = null
    )
    {
        ArgumentNullException.ThrowIfNull(places);
        try
        {
            using var package = WorkbookPackage.Open(source, new ReadingBudget());
            new AnnotatedCopy(package, findings, places, language ?? MessageLanguage.English).Write(target);
            return null;
        }
        catch (UnreadableWorkbookException e)
        {
            return e.Message;
        }
        catch (Exception e) when (e is XmlException or InvalidDataException or EndOfStreamException or NotSupportedException)
        {
            return "The workbook is damaged in a part that notes or marks would go into. Open it in a spreadsheet program and save "
                + "it again as .xlsx.";
        }
    }
}
