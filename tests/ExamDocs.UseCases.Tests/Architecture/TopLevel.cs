namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>What may stand at the top of the repository.</summary>
internal static class TopLevel
{
    private static readonly string[] Known =
    [
        "README.md",
        "DEVELOPERS.md",
        "ExamDocs.sln",
        "src",
        "templates",
        "tests",
        "examples",
        "docs",
        "Directory.Build.props",
        "Directory.Packages.props",
        "global.json",
    ];

    /// <summary>Names that are not of the fixed layout. Dot files are; what tools leave behind is passed over.</summary>
    /// <param name="names">Files and folders at the top.</param>
    /// <param name="ignored">Lines of .gitignore: NAME/ and *.ENDING are understood.</param>
    public static IReadOnlyList<string> Strangers(IEnumerable<string> names, IReadOnlyList<string> ignored) =>
        [
            .. names
                .Where(n => !n.StartsWith('.') && !ignored.Any(line => Matches(line, n)))
                .Except(Known, StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    private static bool Matches(string line, string name) =>
        line.StartsWith("*.", StringComparison.Ordinal)
            ? name.EndsWith(line[1..], StringComparison.Ordinal)
            : string.Equals(line, name + "/", StringComparison.Ordinal);
}
