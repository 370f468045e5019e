using System.Xml.Linq;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>Which room may refer to which: references go one way.</summary>
internal static class ReferenceArrows
{
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["ExamDocs.Core"] = [],
        ["ExamDocs.Intake"] = ["ExamDocs.Core"],
        ["ExamDocs.Documents"] = ["ExamDocs.Core", "ExamDocs.Templates"],
        ["ExamDocs.Register"] = ["ExamDocs.Core"],
        ["ExamDocs.Templates"] = ["ExamDocs.Core"],
        ["ExamDocs.UseCases"] = ["ExamDocs.Core", "ExamDocs.Intake", "ExamDocs.Documents", "ExamDocs.Register", "ExamDocs.Templates"],
        ["ExamDocs.Workbench"] = ["ExamDocs.UseCases"],
        ["ExamDocs.Cli"] = ["ExamDocs.UseCases", "ExamDocs.Workbench"],
    };

    /// <summary>One sentence for every arrow that is not allowed and every project that is not known.</summary>
    /// <param name="root">The folder that holds src and templates.</param>
    public static IReadOnlyList<string> Faults(string root) => [.. Projects(root).SelectMany(FaultsOf).Order(StringComparer.Ordinal)];

    /// <summary>Every project file under src and templates.</summary>
    public static IEnumerable<string> Projects(string root) =>
        new[] { "src", "templates" }
            .Select(folder => Path.Combine(root, folder))
            .Where(Directory.Exists)
            .SelectMany(folder => Directory.EnumerateFiles(folder, "*.csproj", SearchOption.AllDirectories));

    private static IEnumerable<string> FaultsOf(string project)
    {
        var room = Path.GetFileNameWithoutExtension(project);
        if (!Allowed.TryGetValue(room, out var allowed))
            return [$"{room} is no room of this house"];
        return References(project).Where(to => !allowed.Contains(to, StringComparer.Ordinal)).Select(to => $"{room} -> {to}");
    }

    /// <summary>Project references, and references to an assembly of this house by any other road.</summary>
    private static IEnumerable<string> References(string project) =>
        XDocument
            .Load(project)
            .Descendants()
            .Where(e => e.Name.LocalName is "ProjectReference" or "Reference" or "PackageReference")
            .Select(e => (string?)e.Attribute("Include") ?? "")
            .Select(include => include.Replace('\\', '/').Split('/')[^1])
            .Select(name => name.EndsWith(".csproj", StringComparison.Ordinal) ? name[..^".csproj".Length] : name)
            .Where(name => name.StartsWith("ExamDocs.", StringComparison.Ordinal));
}
