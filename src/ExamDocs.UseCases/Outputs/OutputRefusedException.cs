namespace ExamDocs.UseCases.Outputs;

/// <summary>An output cannot be written where it was to go, and nothing was: the message says what is there and what to do.</summary>
public sealed class OutputRefusedException(string message) : IOException(message);
