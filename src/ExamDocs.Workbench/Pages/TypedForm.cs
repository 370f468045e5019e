using System.Text.Json;
using ExamDocs.UseCases.Recording;
using Microsoft.AspNetCore.Http;

namespace ExamDocs.Workbench.Pages;

/// <summary>
/// What came back of a page that records: its fields, and beside them, in one hidden field, what each of them showed when the page was
/// made. A field that did not come back was not touched.
/// </summary>
internal static class TypedForm
{
    /// <summary>The hidden field.</summary>
    public const string Was = "was";

    public static IEnumerable<TypedField> Fields(IFormCollection form)
    {
        var was = Shown(form[Was].ToString());
        return form.Where(f => f.Key.Contains('/', StringComparison.Ordinal))
            .Select(f => new TypedField(f.Key, was.GetValueOrDefault(f.Key, ""), f.Value.ToString()));
    }

    /// <summary>The content of the hidden field.</summary>
    public static string Json(IEnumerable<KeyValuePair<string, string>> shown) =>
        JsonSerializer.Serialize(new Dictionary<string, string>(shown.Where(s => s.Value.Length > 0), StringComparer.Ordinal));

    private static Dictionary<string, string> Shown(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<Dictionary<string, string>>(json) ?? [];
        }
        catch (JsonException)
        {
            // Then every field counts as changed from nothing, and what stands already is not overwritten.
            return [];
        }
    }
}
