namespace ExamDocs.Intake.Binding;

/// <summary>Stops reading; its message is the sentence that the user reads. It never leaves the reader.</summary>
internal sealed class UnreadableWorkbookException(string sentence) : Exception(sentence)
{
    /// <summary>No sheet of it is one that the program knows: it may be a list of the user's own.</summary>
    public bool HasNoKnownSheet { get; init; }
}
