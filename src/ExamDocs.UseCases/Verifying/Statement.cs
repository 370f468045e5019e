namespace ExamDocs.UseCases.Verifying;

/// <summary>How the answer to a question on a document came out.</summary>
public enum Answer
{
    /// <summary>It is as it should be.</summary>
    Holds,

    /// <summary>It is not: the document is not valid.</summary>
    Fails,

    /// <summary>It could not be looked at; that is no fault of the document.</summary>
    NotChecked,
}

/// <summary>One thing said of a document.</summary>
/// <param name="Question">What was asked: name, register, bytes, state, signature, data, outcome, print, genuine.</param>
/// <param name="Answer">How it came out.</param>
/// <param name="Text">The answer in a sentence, without a full stop.</param>
public sealed record Statement(string Question, Answer Answer, string Text)
{
    internal static Statement Holds(string question, string text) => new(question, Answer.Holds, text);

    internal static Statement Fails(string question, string text) => new(question, Answer.Fails, text);

    internal static Statement NotChecked(string question, string text) => new(question, Answer.NotChecked, text);
}

/// <summary>Everything said of one file.</summary>
/// <param name="File">As the user named it.</param>
/// <param name="Number">The document's number, as the file itself says; null where it says none.</param>
/// <param name="Statements">In the order in which they were asked.</param>
public sealed record VerifiedFile(string File, string? Number, IReadOnlyList<Statement> Statements)
{
    public bool IsValid => !Statements.Any(s => s.Answer is Answer.Fails);
}
