using System.Globalization;
using System.Security.Cryptography;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Does the register know it, are these the bytes as issued, and is it current?</summary>
internal static class RegisterQuestions
{
    private const string Register = "register", Bytes = "bytes", State = "state";

    /// <param name="number">As the file says; null where it says none.</param>
    /// <param name="pdf">The whole file.</param>
    /// <param name="register">What it knows of a number, null for one that it never gave out; null where there is none.</param>
    public static IEnumerable<Statement> Ask(string? number, byte[] pdf, Func<string, DocumentStatus?>? register)
    {
        if (register is null)
            return [Statement.NotChecked(Register, "no register was asked: whether it was issued, is unaltered and still current is not checked")];
        if (number is null)
            return [Statement.NotChecked(Register, "it has no number to ask the register for")];
        return register(number) is { } known ? Of(known, pdf) : [Statement.Fails(Register, $"the register has given out no number {number}")];
    }

    private static IEnumerable<Statement> Of(DocumentStatus known, byte[] pdf)
    {
        yield return Statement.Holds(Register, $"the register knows {known.Number}");
        if (known is { State: DocumentState.Pending } or { Sha256: null, State: DocumentState.Issued })
            yield return Statement.Fails(State, $"{known.Number} is not issued yet: its printing was interrupted");
        else if (known.State is DocumentState.Void)
            yield return Statement.Fails(State, $"{known.Number} is void{Because(known.VoidReason)}: nothing was ever issued under it");
        else
        {
            yield return string.Equals(Convert.ToHexStringLower(SHA256.HashData(pdf)), known.Sha256, StringComparison.Ordinal)
                ? Statement.Holds(Bytes, "every byte is as it was issued")
                : Statement.Fails(Bytes, $"the file is not the one that was issued as {known.Number}: it was altered or damaged since");
            yield return End(known);
        }
    }

    private static Statement End(DocumentStatus known) => known.Ended switch
    {
        DocumentEnd.Replaced => Statement.Fails(State, $"{known.Number} is replaced{On(known.EndedOn)}{(known.ReplacedBy is { Count: > 0 } by ? $" by {string.Join(", ", by)}" : "")}{Because(known.EndedReason)}"),
        DocumentEnd.Withdrawn => Statement.Fails(State, $"{known.Number} is withdrawn{On(known.EndedOn)}{Because(known.EndedReason)}"),
        _ => Statement.Holds(State, "it is current: neither replaced nor withdrawn"),
    };

    private static string On(LocalDate? day) => day is { } on ? $" on {on.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)}" : "";

    private static string Because(string? reason) => string.IsNullOrWhiteSpace(reason) ? "" : $" ({reason})";
}
