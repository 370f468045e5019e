using ExamDocs.Core.Findings;

namespace ExamDocs.UseCases.Verifying;

/// <summary>The answer to a question about a document.</summary>
public enum Answer
{
    /// <summary>It is as it should be.</summary>
    Holds,

    /// <summary>It is not: the document is not valid.</summary>
    Fails,

    /// <summary>It could not be checked; that is no fault of the document.</summary>
    NotChecked,
}

/// <summary>One question about a document, with its answer.</summary>
/// <param name="Question">What was asked: name, register, bytes, state, signature, data, outcome, print, genuine.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Text">The answer in a sentence, without a full stop.</param>
public sealed record Statement(string Question, Answer Answer, Message Text)
{
    internal static Statement Holds(string question, Message text) => new(question, Answer.Holds, text);

    internal static Statement Fails(string question, Message text) => new(question, Answer.Fails, text);

    internal static Statement NotChecked(string question, Message text) => new(question, Answer.NotChecked, text);
}

/// <summary>The result for a file.</summary>
public enum Verdict
{
    /// <summary>It is genuine and current, and no answer is against it.</summary>
    Valid,

    /// <summary>Something in it, or in the register, is against it.</summary>
    NotValid,

    /// <summary>No answer is against it, but nothing shows that it is genuine and current.</summary>
    CannotTell,
}

/// <summary>All answers about one file.</summary>
/// <param name="File">As the user named it.</param>
/// <param name="Number">The document's number, as the file itself says; null where it says none.</param>
/// <param name="Sha256">Of the whole file, lower-case hexadecimal; empty where it was not read.</param>
/// <param name="Statements">In the order in which they were asked.</param>
public sealed record VerifiedFile(string File, string? Number, string Sha256, IReadOnlyList<Statement> Statements)
{
    public Verdict Verdict =>
        Statements.Any(s => s.Answer is Answer.Fails) ? Verdict.NotValid
        : Holds("genuine") && Holds("state") ? Verdict.Valid
        : Verdict.CannotTell;

    public bool IsValid => Verdict is Verdict.Valid;

    /// <summary>What would settle it, in a sentence without a full stop; null where it is settled.</summary>
    public Message? Settle =>
        Verdict is not Verdict.CannotTell ? null
        : Holds("genuine") && Holds("print")
            ? (Message)
                $"whether it still holds, only the issuer's register tells: ask the issuer whether this number was replaced or has ended"
        : $"ask the issuer, by a telephone number that you know from elsewhere and not from this document, for the SHA-256 of "
            + $"{(Number is null ? ThisFile : Message.AsIs(Number))}; it must be {Sha256}";

    private static Message ThisFile => $"the file";

    private bool Holds(string question) =>
        Statements.Any(s => string.Equals(s.Question, question, StringComparison.Ordinal) && s.Answer is Answer.Holds);
}
