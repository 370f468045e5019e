using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Verifying;

namespace ExamDocs.Cli;

/// <summary>Says of each file in one line whether it is valid, and below it why; where that cannot be told, what would settle it.</summary>
internal static class VerificationPrinter
{
    /// <param name="verified">In the order asked.</param>
    /// <param name="quiet">Only what is not valid.</param>
    public static void Print(IReadOnlyList<VerifiedFile> verified, bool quiet)
    {
        foreach (var file in verified.Where(v => !quiet || !v.IsValid))
        {
            Console.WriteLine($"{file.File}: {Screen.Say(Summary(file))}");
            foreach (var statement in file.Statements)
                Console.WriteLine($"  {Mark(statement.Answer)} {Screen.Say(statement.Text)}");
            if (file.Sha256.Length > 0)
                Console.WriteLine($"  SHA-256:     {file.Sha256}");
        }
    }

    private static Message Summary(VerifiedFile file) =>
        file.Verdict switch
        {
            Verdict.Valid => $"valid",
            Verdict.NotValid => $"NOT VALID: {file.Statements.First(s => s.Answer is Answer.Fails).Text}",
            _ => $"CANNOT TELL: {file.Settle}",
        };

    private static string Mark(Answer answer) =>
        Screen.Say(
            answer switch
            {
                Answer.Holds => $"holds:      ",
                Answer.Fails => $"fails:      ",
                _ => $"not checked:",
            }
        );
}
