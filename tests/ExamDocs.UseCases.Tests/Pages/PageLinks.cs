namespace ExamDocs.UseCases.Tests.Pages;

/// <summary>Links between the pages of one folder and what is below it.</summary>
/// <param name="root">The folder that no link may leave.</param>
internal sealed class PageLinks(string root)
{
    private readonly Dictionary<string, IReadOnlySet<string>> places = new(StringComparer.Ordinal);

    /// <summary>The pages of the repository that people read: at the top, in docs and in examples.</summary>
    public IReadOnlyList<string> Pages { get; } =
    [
        .. Directory.EnumerateFiles(root, "*.md"),
        .. new[] { "docs", "examples" }
            .Select(f => Path.Combine(root, f))
            .Where(Directory.Exists)
            .SelectMany(f => Directory.EnumerateFiles(f, "*.md", SearchOption.AllDirectories))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Links that lead to a file in the folder.</summary>
    public int Count => Pages.Sum(page => Inner(page).Count());

    /// <summary>One sentence for each link that leads nowhere, and each that leads to another rule than it says.</summary>
    public IReadOnlyList<string> Broken() =>
        [
            .. Pages.SelectMany(page => Inner(page).Select(target => FaultOf(page, target)).OfType<string>()),
            .. Pages.SelectMany(page =>
                MarkdownText
                    .RuleLinks(TextOf(page))
                    .Where(l => !l.Target.EndsWith($"#{l.Code.ToLowerInvariant()}", StringComparison.Ordinal))
                    .Select(l => $"{Name(page)}: {l.Code} leads to {l.Target}")
            ),
        ];

    private static IEnumerable<string> Inner(string page) =>
        MarkdownText.Links(TextOf(page)).Where(t => !Uri.TryCreate(t, UriKind.Absolute, out _));

    private static string TextOf(string page) => File.ReadAllText(page).ReplaceLineEndings("\n");

    private string? FaultOf(string page, string target)
    {
        var parts = target.Split('#', 2);
        var path = parts[0].Length == 0 ? page : Path.GetFullPath(Uri.UnescapeDataString(parts[0]), Path.GetDirectoryName(page)!);
        if (Path.GetRelativePath(root, path).StartsWith("..", StringComparison.Ordinal) || !Path.Exists(path))
            return $"{Name(page)}: {target} is not there";
        if (parts.Length == 1)
            return null;
        return path.EndsWith(".md", StringComparison.Ordinal) && Places(path).Contains(parts[1])
            ? null
            : $"{Name(page)}: {target} names no place on its page";
    }

    private IReadOnlySet<string> Places(string path) =>
        places.TryGetValue(path, out var known) ? known : places[path] = MarkdownText.Places(TextOf(path));

    private string Name(string page) => Path.GetRelativePath(root, page);
}
