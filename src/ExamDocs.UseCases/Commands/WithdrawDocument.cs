using ExamDocs.Core.Identity;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Takes back a document that no longer holds.</summary>
public static class WithdrawDocument
{
    /// <param name="place">The register.</param>
    /// <param name="number">For example R-2026-000123, or what a scanner gives of the document's code.</param>
    /// <param name="reason">Why, in words that can be listed.</param>
    /// <param name="today">The day of the withdrawal.</param>
    /// <returns>Why it was not withdrawn; null where it was.</returns>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    public static string? Run(string place, string number, string reason, LocalDate today)
    {
        number = CodeLine.Read(number)?.Number ?? number;
        using var register = DocumentRegister.OpenExisting(place, today);
        if (register.Withdraw(number, reason))
            return null;
        return register.Find(number) switch
        {
            { Ended: DocumentEnd.Replaced } d => $"{number} was replaced by {string.Join(", ", d.ReplacedBy)} already",
            { Ended: DocumentEnd.Withdrawn } => $"{number} was withdrawn already",
            { Ended: DocumentEnd.Ended } d => $"{number} ended already: {d.EndedReason}",
            _ => $"no document was issued under {number} in this register",
        };
    }
}
