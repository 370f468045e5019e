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
    public static IReadOnlyDictionary<string, string[]> CirclesToUndo { get; } = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["ExamDocs.Documents"] = ["Finishing <> Signing"],
        ["ExamDocs.Intake"] = ["Annotating <> Binding <> Workbook"],
        ["ExamDocs.Register"] = ["(top) <> Checking <> Log <> Merging <> Storage"],
        ["ExamDocs.Templates"] = ["(top) <> Shared <> Wording"],
    };

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
