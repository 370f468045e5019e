using System.Text;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Commands;

/// <summary>Writes what falls due as a file that calendars take in.</summary>
public static class WriteDueCalendar
{
    /// <summary>The calendar as text.</summary>
    public static string Text(DueList list, MessageLanguage language) => DueCalendar.Of(list, language);

    /// <exception cref="OutputRefusedException">It may not be written there.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void Run(DueList list, string file, OutputGuard outputs, MessageLanguage language)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        outputs.Write(file, Encoding.UTF8.GetBytes(Text(list, language)));
    }
}
