using System.Reflection;
using System.Text.Json;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Criteria;

/// <summary>The built-in categories, in the order in which they are offered; one data file each.</summary>
public static class Catalogue
{
    /// <summary>The explicit index: a new category is one file in Criteria/Data and one line here.</summary>
    private static readonly string[] Index =
    [
        "harness",
        "rope-bridge",
        "climbing-rope",
        "lanyard",
        "connector",
        "pulley",
        "swivel-ring",
        "rope-adjuster",
        "friction-cord",
        "sling",
        "anchor-cover",
        "energy-absorber",
        "helmet",
        "rigging-rope",
        "rigging-block",
        "lowering-device",
    ];

    public static IReadOnlyList<Category> All { get; } = [.. Index.Select(Load)];

    private static readonly Dictionary<string, Category> ById = All.ToDictionary(c => c.Id, StringComparer.Ordinal);

    /// <summary>Names of the built-in data files, for the test that finds a forgotten index line.</summary>
    internal static IEnumerable<string> DataFiles =>
        typeof(Catalogue)
            .Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith("criteria/", StringComparison.Ordinal))
            .Select(n => n["criteria/".Length..^".json".Length]);

    internal static IEnumerable<string> IndexLines => Index;

    /// <summary>The category with this id; null where there is none.</summary>
    public static Category? Find(string? id) => id is not null && ById.TryGetValue(id, out var category) ? category : null;

    /// <summary>The whole catalogue as JSON, with every flag written out.</summary>
    public static string ToJson() => ToJson(All);

    /// <summary>Some categories of the catalogue in the same form.</summary>
    public static string ToJson(IReadOnlyList<Category> categories) => JsonSerializer.Serialize(categories, RuleJson.Options);

    private static Category Load(string id)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"criteria/{id}.json")
            ?? throw new InvalidOperationException($"the catalogue names {id}, and there is no Criteria/Data/{id}.json");
        using var file = RuleMembers.Parse(stream);
        var category = CategoryData.Read(file.RootElement);
        return string.Equals(category.Id, id, StringComparison.Ordinal)
            ? category
            : throw new InvalidOperationException($"Criteria/Data/{id}.json calls itself {category.Id}");
    }
}
