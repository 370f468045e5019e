using System.Globalization;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>What the arrows between the types of one project come to between its folders.</summary>
internal sealed class FolderArrows
{
    /// <summary>Stands for the project's own folder.</summary>
    public const string Top = "(top)";

    private readonly string _root;
    private readonly IReadOnlyList<(string From, string To, TypeArrow Arrow)> _between;
    private readonly IReadOnlyList<string> _folders;

    /// <param name="root">The project's namespace: a folder is the part of a namespace that follows.</param>
    /// <param name="arrows">Between its types, and to others.</param>
    public FolderArrows(string root, IReadOnlyCollection<TypeArrow> arrows)
    {
        _root = root;
        _folders =
        [
            .. arrows.Select(a => FolderOf(a.From)).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
        _between =
        [
            .. arrows
                .Where(a => string.Equals(a.From.Assembly, a.To.Assembly, StringComparison.Ordinal))
                .Select(a => (From: FolderOf(a.From), To: FolderOf(a.To), a))
                .Where(a => a is { From: not null, To: not null } && !Same(a.From, a.To))
                .Select(a => (a.From!, a.To!, a.a)),
        ];
    }

    /// <summary>Every folder that holds a type.</summary>
    public IReadOnlyList<string> Names => _folders;

    /// <summary>How many arrows lead from one folder into another.</summary>
    public int Count => _between.Count;

    /// <summary>Every arrow that leads from a lower floor to a higher one, and every folder that has no floor.</summary>
    /// <param name="floors">Folders of each floor, the lowest first.</param>
    public IReadOnlyList<string> Up(IReadOnlyList<IReadOnlyList<string>> floors)
    {
        var floorOf = floors
            .SelectMany((folders, floor) => folders.Select(folder => (folder, floor + 1)))
            .ToDictionary(f => f.folder, f => f.Item2, StringComparer.Ordinal);
        return
        [
            .. _folders.Where(f => !floorOf.ContainsKey(f)).Select(f => $"{f} has no floor"),
            .. _between
                .Where(a => floorOf.TryGetValue(a.From, out var from) && floorOf.TryGetValue(a.To, out var to) && from < to)
                .Select(a =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{a.From}/{a.Arrow.From.Name} ({floorOf[a.From]}) -> {a.To}/{a.Arrow.To.Name} ({floorOf[a.To]})"
                    )
                )
                .Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>Folders from each of which an arrow leads round to itself over the others, one line for each such circle.</summary>
    public IReadOnlyList<string> Circles()
    {
        var reached = _folders.ToDictionary(f => f, Reached, StringComparer.Ordinal);
        return
        [
            .. _folders
                .Where(f => reached[f].Contains(f))
                .Select(f => string.Join(" <> ", _folders.Where(g => reached[f].Contains(g) && reached[g].Contains(f))))
                .Distinct(StringComparer.Ordinal),
        ];
    }

    /// <summary>Folders that a folder uses itself.</summary>
    public IReadOnlyList<string> UsedBy(string folder) =>
        [.. _between.Where(a => Same(a.From, folder)).Select(a => a.To).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>The arrows between the folders of a circle, to be read by whoever has to undo it.</summary>
    public IEnumerable<string> Within(string circle)
    {
        var folders = circle.Split(" <> ");
        return _between
            .Where(a => folders.Contains(a.From, StringComparer.Ordinal) && folders.Contains(a.To, StringComparer.Ordinal))
            .Select(a => $"{a.From}/{a.Arrow.From.Name} -> {a.To}/{a.Arrow.To.Name}")
            .Order(StringComparer.Ordinal);
    }

    private HashSet<string> Reached(string from)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([from]);
        while (open.TryPop(out var folder))
        {
            foreach (var next in UsedBy(folder).Where(reached.Add))
                open.Push(next);
        }
        return reached;
    }

    /// <summary>Null for what the compiler puts outside the project's own namespace.</summary>
    private string? FolderOf(NamedType type) =>
        Same(type.Namespace, _root) ? Top
        : type.Namespace.StartsWith(_root + ".", StringComparison.Ordinal) ? type.Namespace[(_root.Length + 1)..].Split('.')[0]
        : null;

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
