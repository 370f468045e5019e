namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>The floors on which the folders of Core and of Register stand.</summary>
internal static class Floors
{
    /// <summary>The lowest first: a type knows types of its own floor and of lower ones.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> OfCore { get; } =
    [
        ["Records", "Calendar", "Findings", "Identity"],
        ["Criteria", "Measurement"],
        ["Regimes", "Sentences"],
        ["Service"],
        ["Known"],
        ["Cases"],
        ["Determination"],
        ["Rules"],
        [FolderArrows.Top],
    ];

    /// <summary>The lowest first, as in Core.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> OfRegister { get; } =
    [
        ["Model"],
        ["Log"],
        ["Files", "Storage"],
        ["Rows"],
        ["Opening"],
        ["Checking"],
        ["Merging"],
        [FolderArrows.Top],
    ];

    /// <summary>Parts of Core whose types the command line may know besides the jobs.</summary>
    public static IReadOnlyList<string> PlainOfCore { get; } =
    ["ExamDocs.Core.Records", "ExamDocs.Core.Findings", "ExamDocs.Core.Criteria", "ExamDocs.Core.Regimes"];

    /// <summary>Nothing may be added here. Whoever gives the command line a job for one takes its line out.</summary>
    public static IReadOnlyList<string> CommandLineStillKnows { get; } =
    [
        "ExamDocs.Core.Determination.DeterminedItem",
        "ExamDocs.Core.Determination.DeterminedVisit",
        "ExamDocs.Core.Determination.Reason",
        "ExamDocs.Documents.LabelSheets.LabelFormat",
        "ExamDocs.Documents.LabelSheets.LabelStock",
        "ExamDocs.Documents.LabelSheets.Placing",
        "ExamDocs.Documents.LabelSheets.StockFile",
        "ExamDocs.Documents.Signing.DocumentSigner",
        "ExamDocs.Documents.Signing.SignatureTrust",
        "ExamDocs.Register.Checking.RegisterCheckResult",
        "ExamDocs.Register.DocumentRegister",
        "ExamDocs.Register.Log.Checkpoint",
        "ExamDocs.Register.Merging.MergeResult",
        "ExamDocs.Register.Model.DocumentEnd",
        "ExamDocs.Register.Model.DocumentStatus",
        "ExamDocs.Register.Model.IssuedDocument",
        "ExamDocs.Register.Model.RememberedVisit",
        "ExamDocs.Register.VisitRegister",
        "ExamDocs.Templates.DocumentType",
        "ExamDocs.Templates.DocumentTypes",
        "ExamDocs.Templates.Label.ReadingDistance",
        "ExamDocs.Templates.Letterhead",
        "ExamDocs.Templates.Shared.Wording.Language",
    ];

    /// <summary>Libraries that only one project knows: what their assemblies' names begin with.</summary>
    public static IReadOnlyList<(string Library, string Project)> Owned { get; } =
    [
        ("Microsoft.Data.Sqlite", "ExamDocs.Register"),
        ("SQLitePCLRaw", "ExamDocs.Register"),
        ("Npgsql", "ExamDocs.Register"),
        ("PdfSharp", "ExamDocs.Documents"),
        ("PuppeteerSharp", "ExamDocs.Documents"),
    ];
}
