using System.Security.Cryptography;
using ExamDocs.Core.Findings;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Does the register know the document, are these the bytes as issued, and is it current?</summary>
internal static class RegisterQuestions
{
    private const string Register = "register",
        Bytes = "bytes",
        State = "state";

    /// <summary>The most items that are named.</summary>
    private const int Most = 10;

    /// <param name="number">The number that the file gives; null where it gives none.</param>
    /// <param name="pdf">The whole file.</param>
    /// <param name="asked">The register.</param>
    /// <param name="issuedBy">Identity of the register that gave out the number, by the file; null where it names none.</param>
    public static IEnumerable<Statement> Ask(string? number, byte[] pdf, AskedRegister asked, string? issuedBy = null)
    {
        var (register, identity, against) = asked;
        if (register is null)
            return
            [
                Statement.NotChecked(
                    Register,
                    $"no register was asked: whether it was issued, is unaltered and still current is not checked"
                ),
            ];
        if (number is null)
            return [Statement.NotChecked(Register, $"it has no number to ask the register for")];
        var known = register(number);
        // Two registers may have given out the same number: only the one that issued this document can answer for it.
        if (
            issuedBy is not null
            && identity is not null
            && !string.Equals(issuedBy, known?.Origin ?? identity, StringComparison.Ordinal)
            && !IsAsIssued(known, pdf)
        )
            return
            [
                Statement.NotChecked(
                    Register,
                    $"{number} was given out by another register ({issuedBy[..Math.Min(8, issuedBy.Length)]}), not by the one "
                        + $"asked ({identity[..8]}): ask that one"
                ),
            ];
        return known is not null ? Of(known, pdf, against) : [Statement.Fails(Register, $"the register has given out no number {number}")];
    }

    private static bool IsAsIssued(DocumentStatus? known, byte[] pdf) =>
        known is { State: DocumentState.Issued }
        && string.Equals(Convert.ToHexStringLower(SHA256.HashData(pdf)), known.Sha256, StringComparison.Ordinal);

    private static IEnumerable<Statement> Of(
        DocumentStatus known,
        byte[] pdf,
        Func<DocumentStatus, IEnumerable<(string Item, Message Why)>>? against
    )
    {
        yield return Statement.Holds(Register, $"the register knows {known.Number}");
        if (known is { State: DocumentState.Pending } or { Sha256: null, State: DocumentState.Issued })
            yield return Statement.Fails(State, $"{known.Number} is not issued yet: its printing was interrupted");
        else if (known.State is DocumentState.Void)
            yield return Statement.Fails(
                State,
                $"{known.Number} is void{EndedWords.Because(known.VoidReason)}: nothing was ever issued under it"
            );
        else
        {
            yield return string.Equals(Convert.ToHexStringLower(SHA256.HashData(pdf)), known.Sha256, StringComparison.Ordinal)
                ? Statement.Holds(Bytes, $"every byte is as it was issued")
                : Statement.Fails(Bytes, $"the file is not the one that was issued as {known.Number}: it was altered or damaged since");
            yield return End(known, [.. against?.Invoke(known) ?? []]);
        }
    }

    private static Message By(IReadOnlyList<string> numbers) => numbers.Count > 0 ? $" by {string.Join(", ", numbers)}" : Message.None;

    private static Message Named((string Item, Message Why) against) => $"{against.Item}: {against.Why}";

    private static Statement End(DocumentStatus known, IReadOnlyList<(string Item, Message Why)> against) =>
        known.Ended switch
        {
            DocumentEnd.Replaced => Statement.Fails(
                State,
                $"{known.Number} is replaced{EndedWords.On(known.EndedOn)}{By(known.ReplacedBy)}{EndedWords.Because(known.EndedReason)}"
            ),
            DocumentEnd.Withdrawn => Statement.Fails(
                State,
                $"{known.Number} is withdrawn{EndedWords.On(known.EndedOn)}{EndedWords.Because(known.EndedReason)}"
            ),
            DocumentEnd.Ended => Statement.Fails(State, $"{known.Number} no longer holds: {EndedWords.Of(known)}"),
            _ when known.EndedLines.Count > 0 => Statement.Fails(
                State,
                $"{known.Number} no longer holds for {string.Join(", ", known.EndedLines.Select(l => l.Item))}: "
                    + $"{EndedWords.Of(known)}; for the other items it still does"
            ),
            _ when against.Count > 0 => Statement.Fails(
                State,
                $"by what the register knows now it does not hold for {Message.Join("; ", against.Take(Most).Select(Named))}"
            ),
            _ => Statement.Holds(State, $"it is current: neither replaced nor withdrawn, and nothing of it has ended"),
        };
}

/// <summary>How a register is asked about documents.</summary>
/// <param name="Find">Gives what it knows of a number, or null for one that it never gave out; null where no register is asked.</param>
/// <param name="Identity">Its identity.</param>
/// <param name="Against">Gives the items of a current document that may not be used as it says, with the reason.</param>
internal sealed record AskedRegister(
    Func<string, DocumentStatus?>? Find,
    string? Identity,
    Func<DocumentStatus, IEnumerable<(string Item, Message Why)>>? Against
);
