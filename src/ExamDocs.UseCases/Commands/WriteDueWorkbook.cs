using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Tables;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Commands;

/// <summary>Writes what falls due as a workbook: the list, the plan by month, the visits proposed, and what may not be used.</summary>
public static class WriteDueWorkbook
{
    /// <summary>The workbook, whole.</summary>
    public static byte[] Bytes(DueList list, IReadOnlyList<ProposedVisit> visits, MessageLanguage language) =>
        TableWorkbook.Of(DueSheets.Of(list, visits, language));

    /// <exception cref="OutputRefusedException">It may not be written there.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void Run(DueList list, IReadOnlyList<ProposedVisit> visits, string file, OutputGuard outputs, MessageLanguage language)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        outputs.Write(file, Bytes(list, visits, language));
    }
}
