namespace ExamDocs.Intake.Binding;

/// <summary>Stops reading; its message is the sentence that the user reads. It never leaves the reader.</summary>
internal sealed class UnreadableWorkbookException(string sentence) : Exception(sentence);
