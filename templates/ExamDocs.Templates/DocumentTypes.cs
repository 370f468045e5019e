namespace ExamDocs.Templates;

/// <summary>One kind of printed document.</summary>
/// <param name="Kind">Its name in files, for example quarantine-label.</param>
/// <param name="Letter">First letter of its numbers.</param>
/// <param name="Folder">Folder of its model, template and style sheet.</param>
public sealed record DocumentType(string Kind, char Letter, string Folder)
{
    /// <summary>True where a visit does not call for it by itself: it is issued only where the user asks for its kind.</summary>
    public bool IsOnRequest { get; init; }
}

/// <summary>The explicit index of what can be printed: a new document is one folder and one line here.</summary>
public static class DocumentTypes
{
    public static DocumentType Report { get; } = new("report", 'R', "Report");

    public static DocumentType Notice { get; } = new("notice", 'N', "Notice");

    public static DocumentType Certificate { get; } = new("certificate", 'C', "Certificate");

    public static DocumentType QuarantineLabel { get; } = new("quarantine-label", 'Q', "Label");

    public static DocumentType DueLabel { get; } = new("due-label", 'D', "DueLabel");

    public static DocumentType EquipmentRecord { get; } = new("record", 'E', "EquipmentRecord") { IsOnRequest = true };

    public static DocumentType CheckSheet { get; } = new("check-sheet", 'S', "CheckSheet") { IsOnRequest = true };

    public static DocumentType Evidence { get; } = new("evidence", 'F', "Evidence") { IsOnRequest = true };

    public static IReadOnlyList<DocumentType> All { get; } =
    [Report, Notice, Certificate, QuarantineLabel, DueLabel, EquipmentRecord, CheckSheet, Evidence];

    /// <summary>The type of this kind; null where there is none.</summary>
    public static DocumentType? Find(string kind) => All.FirstOrDefault(t => string.Equals(t.Kind, kind, StringComparison.Ordinal));
}
