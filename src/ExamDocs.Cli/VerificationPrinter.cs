using ExamDocs.UseCases.Verifying;

namespace ExamDocs.Cli;

/// <summary>Says of each file in one line whether it is valid, and below it why.</summary>
internal static class VerificationPrinter
{
    /// <param name="verified">In the order asked.</param>
    /// <param name="quiet">Only what is not valid.</param>
    public static void Print(IReadOnlyList<VerifiedFile> verified, bool quiet)
    {
        foreach (var file in verified.Where(v => !quiet || !v.IsValid))
        {
            Console.WriteLine(file.IsValid ? $"{file.File}: valid" : $"{file.File}: NOT VALID: {file.Statements.First(s => s.Answer is Answer.Fails).Text}");
            foreach (var statement in file.Statements)
                Console.WriteLine($"  {Mark(statement.Answer)} {statement.Text}");
        }
    }

    private static string Mark(Answer answer) => answer switch
    {
        Answer.Holds => "holds:      ",
        Answer.Fails => "fails:      ",
        _ => "not checked:",
    };
}
