namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>The floors on which the folders of Core and of Register stand.</summary>
internal static class Floors
{
    /// <summary>The lowest first: a type knows types of its own floor and of lower ones.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> OfCore { get; } =
    [
        ["Records", "Calendar", "Findings", "Identity", "Statistics"],
        ["Criteria", "Measurement", "Recalls"],
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
        ["Files", "Storage", "Contents"],
        ["Rows"],
        ["Opening"],
        ["Work"],
        ["Checking"],
        ["Merging"],
        [FolderArrows.Top],
    ];

    /// <summary>Parts of Core whose types the command line may know besides the jobs.</summary>
    public static IReadOnlyList<string> PlainOfCore { get; } =
    ["ExamDocs.Core.Records", "ExamDocs.Core.Findings", "ExamDocs.Core.Criteria", "ExamDocs.Core.Regimes", "ExamDocs.Core.Recalls"];

    /// <summary>Libraries that only one project knows: what their assemblies' names begin with.</summary>
    public static IReadOnlyList<(string Library, string Project)> Owned { get; } =
    [
        ("Microsoft.Data.Sqlite", "ExamDocs.Register"),
        ("SQLitePCLRaw", "ExamDocs.Register"),
        ("Npgsql", "ExamDocs.Register"),
        ("AWSSDK", "ExamDocs.Register"),
        ("PdfSharp", "ExamDocs.Documents"),
        ("PuppeteerSharp", "ExamDocs.Documents"),
    ];
}
