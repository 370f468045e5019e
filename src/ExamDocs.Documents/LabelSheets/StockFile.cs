using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>A stock in a user's own JSON file.</summary>
public static partial class StockFile
{
    private const int MostBytes = 65_536;

    private static readonly string[] Required = ["name", "what", "pageWidthMm", "pageHeightMm", "labelWidthMm", "labelHeightMm"];

    private static readonly string[] Optional = ["rows", "columns", "leftMm", "topMm", "pitchXMm", "pitchYMm", "eyelet"];

    internal static JsonSerializerOptions Options { get; } =
        new()
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            RespectRequiredConstructorParameters = true,
            RespectNullableAnnotations = true,
            AllowDuplicateProperties = false,
        };

    /// <summary>Reads it and says all that is wrong with it.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The stock, or sentences on what is wrong with it.</returns>
    /// <exception cref="IOException">The file cannot be read.</exception>
    public static (LabelStock? Stock, IReadOnlyList<string> Faults) Read(string path)
    {
        if (new FileInfo(path).Length > MostBytes)
            return (null, ["it is too large for a stock"]);
        return Parse(File.ReadAllBytes(path));
    }

    internal static (LabelStock? Stock, IReadOnlyList<string> Faults) Parse(byte[] json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            if (Unlike(document.RootElement) is { Count: > 0 } unlike)
                return (null, unlike);
            var stock = JsonSerializer.Deserialize<LabelStock>(json, Options)!;
            IReadOnlyList<string> faults = [.. StockFaults.Of(stock)];
            return faults.Count == 0 ? (stock, []) : (null, faults);
        }
        catch (JsonException e)
        {
            return (null, [Said(e)]);
        }
    }

    private static IReadOnlyList<string> Unlike(JsonElement root)
    {
        if (root.ValueKind is not JsonValueKind.Object)
            return ["a stock is one JSON object, in braces"];
        var names = root.EnumerateObject().Select(p => p.Name).ToList();
        var missing = Required.Except(names, StringComparer.Ordinal).Select(n => $"{n} is missing");
        var unknown = names
            .Except(Required.Concat(Optional), StringComparer.Ordinal)
            .Select(n => $"{n} is not known; a stock has {string.Join(", ", Required.Concat(Optional))}");
        var twice = names.GroupBy(n => n, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there twice");
        return [.. missing, .. unknown, .. twice];
    }

    // What the reader itself says names types of this program.
    private static string Said(JsonException e) =>
        e.Path is { Length: > 2 } path && Member().IsMatch(path)
            ? $"{path[2..]} is not what is wanted there: lengths are numbers of millimetres, rows and columns whole numbers, "
                + "name and what are text, eyelet has xMm, yMm and diameterMm"
            : FormattableString.Invariant($"it is not JSON: see line {(e.LineNumber ?? 0) + 1}");

    [GeneratedRegex(@"\A\$\.[A-Za-z.]+\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Member();
}
