using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Issuing;

/// <summary>A document that is out.</summary>
/// <param name="Document">As the register has it.</param>
/// <param name="IssuedNow">False where it was issued by an earlier run on the same record.</param>
public sealed record Issued(IssuedDocument Document, bool IssuedNow)
{
    public string Number => Document.Number;

    /// <summary>For example report.</summary>
    public string Kind => Document.Kind;

    /// <summary>Ids of the items it is about.</summary>
    public IReadOnlyList<string> Items => Document.Items;

    /// <summary>Number of the report that it is a copy of for the enforcing authority; null for what is no copy.</summary>
    public string? CopyOf { get; init; }

    /// <summary>Name of its file in the folder.</summary>
    public string FileName { get; init; } = Document.FileName;

    /// <summary>The job that made it, or would make it again; null for a document that was only looked up.</summary>
    internal DocumentJob? Job { get; init; }
}
