using System.Reflection;
using System.Text.Json;
using Json.Pointer;
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

    /// <returns>A sentence for every fault, its place first; empty where the file keeps to the schema.</returns>
    public IReadOnlyList<string> Faults(JsonElement file)
    {
        var result = _schema.Evaluate(file, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return result.IsValid ? [] : [.. (result.Details ?? []).Where(d => d.Errors is { Count: > 0 })
            .Select(d => $"{d.InstanceLocation}: {What(d)}").Distinct(StringComparer.Ordinal)];
    }

    private string What(EvaluationResults detail)
    {
        var path = detail.EvaluationPath.ToString();
        if (path.EndsWith("/additionalProperties", StringComparison.Ordinal))
            return "there is no such member here; take it out";
        var fragment = Uri.UnescapeDataString(detail.SchemaLocation.Fragment.TrimStart('#'));
        var wanted = JsonPointer.TryParse(fragment, out var pointer) && pointer.Evaluate(_text) is { ValueKind: JsonValueKind.Object } at
            && at.TryGetProperty("description", out var description) ? description.GetString() : null;
        return $"{string.Join("; ", detail.Errors!.Values)}. {wanted}".TrimEnd();
    }
}
