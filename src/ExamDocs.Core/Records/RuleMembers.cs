using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Core.Records;

/// <summary>
/// One object of a category's or regime's data, taken member by member. What is missing, unknown, null or of another kind is refused.
/// Written out by hand: to learn these types by reflection takes longer than all else that a short run does.
/// </summary>
internal sealed class RuleMembers
{
    private readonly JsonElement _object;
    private readonly string _path;
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);

    private RuleMembers(JsonElement element, string path) => (_object, _path) = (element, path);

    /// <param name="root">The whole file.</param>
    /// <param name="of">Takes every member that it knows.</param>
    /// <exception cref="JsonException">Something is refused; its path is named.</exception>
    public static T Read<T>(JsonElement root, Func<RuleMembers, T> of) => Read(root, "$", of);

    /// <exception cref="JsonException">It is not JSON, or a member stands there twice.</exception>
    public static JsonDocument Parse(Stream data) =>
        JsonDocument.Parse(data, new JsonDocumentOptions { AllowDuplicateProperties = false, MaxDepth = RuleJson.MaxDepth });

    public string Text(string name) => TextOf(Required(name), PathOf(name));

    public string? TextOrNull(string name) => Find(name) is { } found ? TextOf(found, PathOf(name)) : null;

    public bool Flag(string name, bool otherwise = false) => FlagOrNull(name, mayBeNull: false) ?? otherwise;

    public bool? FlagOrNull(string name, bool mayBeNull = true) =>
        Find(name, mayBeNull) is not { } found ? null
        : found.ValueKind is JsonValueKind.True or JsonValueKind.False ? found.GetBoolean()
        : throw Refused(PathOf(name), "true or false is wanted");

    public int Number(string name) => NumberOf(Required(name), name);

    public int? NumberOrNull(string name) => Find(name) is { } found ? NumberOf(found, name) : null;

    public LocalDate? DayOrNull(string name) =>
        Find(name) is not { } found ? null
        : LocalDatePattern.Iso.Parse(TextOf(found, PathOf(name))) is { Success: true, Value: var day } ? day
        : throw Refused(PathOf(name), "a date is written year-month-day, for example 2026-05-11");

    /// <summary>The value that a word names.</summary>
    public T Word<T>(string name)
        where T : struct, Enum => WordOf<T>(Required(name), PathOf(name));

    public T Word<T>(string name, T otherwise)
        where T : struct, Enum => Find(name, mayBeNull: false) is { } found ? WordOf<T>(found, PathOf(name)) : otherwise;

    public IReadOnlyList<T> Words<T>(string name)
        where T : struct, Enum => Elements(Required(name), PathOf(name), WordOf<T>);

    public IReadOnlyList<string>? TextsOrNull(string name) => Find(name) is { } found ? Elements(found, PathOf(name), TextOf) : null;

    /// <summary>Empty where it is left out.</summary>
    public IReadOnlyList<string> Texts(string name) =>
        Find(name, mayBeNull: false) is { } found ? Elements(found, PathOf(name), TextOf) : [];

    public IReadOnlyList<T> List<T>(string name, Func<RuleMembers, T> of) =>
        Elements(Required(name), PathOf(name), (e, path) => Read(e, path, of));

    /// <summary>Empty where it is left out.</summary>
    public IReadOnlyList<T> ListOrNone<T>(string name, Func<RuleMembers, T> of) =>
        Find(name, mayBeNull: false) is null ? [] : List(name, of);

    private static T Read<T>(JsonElement element, string path, Func<RuleMembers, T> of)
    {
        if (element.ValueKind is not JsonValueKind.Object)
            throw Refused(path, "an object is wanted, in braces");
        var members = new RuleMembers(element, path);
        var read = of(members);
        foreach (var member in element.EnumerateObject())
        {
            if (!members._known.Contains(member.Name))
                throw Refused(members.PathOf(member.Name), "there is no such member");
        }
        return read;
    }

    private JsonElement Required(string name) => Find(name, mayBeNull: false) ?? throw Refused(PathOf(name), "the member is missing");

    /// <returns>Null where it is left out, or null and may be.</returns>
    private JsonElement? Find(string name, bool mayBeNull = true)
    {
        _known.Add(name);
        if (!_object.TryGetProperty(name, out var found))
            return null;
        if (found.ValueKind is not JsonValueKind.Null)
            return found;
        return mayBeNull ? null : throw Refused(PathOf(name), "a value is wanted");
    }

    private static IReadOnlyList<T> Elements<T>(JsonElement list, string path, Func<JsonElement, string, T> of)
    {
        if (list.ValueKind is not JsonValueKind.Array)
            throw Refused(path, "a list is wanted, in brackets");
        var elements = new T[list.GetArrayLength()];
        for (var n = 0; n < elements.Length; n++)
            elements[n] = of(list[n], string.Create(CultureInfo.InvariantCulture, $"{path}[{n}]"));
        return elements;
    }

    private static string TextOf(JsonElement element, string path) =>
        element.ValueKind is JsonValueKind.String ? element.GetString()! : throw Refused(path, "a text is wanted");

    private int NumberOf(JsonElement element, string name) =>
        element.ValueKind is JsonValueKind.Number && element.TryGetInt32(out var number)
            ? number
            : throw Refused(PathOf(name), "a whole number is wanted");

    private static T WordOf<T>(JsonElement element, string path)
        where T : struct, Enum
    {
        var word = TextOf(element, path);
        // The parser would take numbers, capitals and several words too: only the word as it is written out is one.
        return
            Enum.TryParse(typeof(T), word.Replace("-", "", StringComparison.Ordinal), ignoreCase: true, out var value)
            && string.Equals(JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString()!), word, StringComparison.Ordinal)
            ? (T)value
            : throw Refused(path, $"'{word}' is none of the words");
    }

    private string PathOf(string name) => $"{_path}.{name}";

    private static JsonException Refused(string path, string why) => new($"{path}: {why}", path, null, null);
}
