using System.Reflection;
using System.Text.Json;
using Json.Schema;

namespace ExamDocs.Intake.RuleFiles;

/// <summary>One of the published schemas, and what it has to say about a file: where, what, and what to type.</summary>
internal sealed class RuleSchema
{
    private readonly JsonSchema _schema;

    private readonly JsonElement _text;

    private RuleSchema(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"schemas/{name}.schema.json")
            ?? throw new InvalidOperationException($"the schema {name} is not built in");
        using var document = JsonDocument.Parse(stream);
        _text = document.RootElement.Clone();
        _schema = JsonSchema.FromText(_text.GetRawText());
    }

    public static RuleSchema Regime { get; } = new("regime");

    public static RuleSchema Category { get; } = new("category");

    public static RuleSchema Headings { get; } = new("headings");

    public static RuleSchema Letterhead { get; } = new("letterhead");

    public static RuleSchema Map { get; } = new("map");

    public static RuleSchema Recall { get; } = new("recall");

    /// <returns>A sentence for every fault, its place first; empty where the file keeps to the schema.</returns>
    public IReadOnlyList<string> Faults(JsonElement file)
    {
        var result = _schema.Evaluate(file, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return result.IsValid
            ? []
            :
            [
                .. (result.Details ?? [])
                    .Where(d => d.Errors is { Count: > 0 })
                    .Select(d => $"{(d.InstanceLocation.ToString() is { Length: > 0 } place ? place : "/")}: {What(d)}")
                    .Distinct(StringComparer.Ordinal),
            ];
    }

    private string What(EvaluationResults detail)
    {
        var steps = detail.EvaluationPath.ToString().Split('/', StringSplitOptions.RemoveEmptyEntries);
        return steps is [.., "additionalProperties"]
            ? "there is no such member here; take it out"
            : $"{string.Join("; ", detail.Errors!.Values)}. {Wanted(steps)}".TrimEnd();
    }

    /// <summary>
    /// What the schema says is to be typed there. The library's paths hold steps twice that lead nowhere: they are passed over.
    /// </summary>
    private string? Wanted(IEnumerable<string> steps)
    {
        var at = _text;
        foreach (var step in steps)
        {
            if (at.TryGetProperty(step, out var next))
                at =
                    next.ValueKind is JsonValueKind.String
                        ? _text.GetProperty("$defs").GetProperty(next.GetString()!.Split('/')[^1])
                        : next;
        }
        return at.TryGetProperty("description", out var wanted) ? wanted.GetString() : null;
    }
}
