namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>The floors on which the folders of Core stand, and the circles elsewhere that are still to be undone.</summary>
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

    /// <summary>Nothing may be added here. Whoever undoes one takes its line out.</summary>
    public static IReadOnlyDictionary<string, string[]> CirclesToUndo { get; } =
        new Dictionary<string, string[]>(StringComparer.Ordinal)
        {
            ["ExamDocs.Register"] = ["(top) <> Checking <> Log <> Merging <> Storage"],
        };

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
        "ExamDocs.Register.DocumentEnd",
        "ExamDocs.Register.DocumentRegister",
        "ExamDocs.Register.DocumentStatus",
        "ExamDocs.Register.IssuedDocument",
        "ExamDocs.Register.Log.Checkpoint",
        "ExamDocs.Register.MergeResult",
        "ExamDocs.Register.RegisterCheckResult",
        "ExamDocs.Register.RememberedVisit",
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
