namespace ExamDocs.Register.Model;

/// <summary>What moving the bytes of documents to another place came to.</summary>
/// <param name="Place">Where they are now.</param>
/// <param name="Copied">How many were not there before.</param>
/// <param name="Faults">One sentence for each document that is nowhere as it was issued; it is left where it was.</param>
/// <param name="Stayed">One sentence for each reason why some were not dropped from where they were before.</param>
public sealed record ContentMoved(string Place, int Copied, IReadOnlyList<string> Faults, IReadOnlyList<string> Stayed);
