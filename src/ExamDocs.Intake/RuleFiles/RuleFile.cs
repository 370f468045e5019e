using System.Globalization;
using System.Text.Json;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Rules;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Json;

namespace ExamDocs.Intake.RuleFiles;

/// <summary>A file of the user's own rules, read; or why it cannot be.</summary>
/// <param name="Value">Null where it cannot be read.</param>
/// <param name="Faults">A sentence each: the place in the file, what is wrong, what to type.</param>
public sealed record RuleFile<T>(T? Value, IReadOnlyList<string> Faults)
    where T : class;

/// <summary>Reads regimes and categories that the user wrote. A file is taken for hostile: what it may cost is limited.</summary>
public static class RuleFile
{
    /// <summary>Largest file that is parsed, bytes: ten times the largest that is built in.</summary>
    public const int MaxBytes = 256 * 1024;

    private const int MostFaults = 10;

    /// <param name="utf8">The file's bytes.</param>
    public static RuleFile<Regime> Regime(ReadOnlyMemory<byte> utf8) => Read(utf8, RuleSchema.Regime, RegimeFaults.Of, RegimeData.Read);

    /// <param name="utf8">The file's bytes.</param>
    public static RuleFile<Category> Category(ReadOnlyMemory<byte> utf8) =>
        Read(utf8, RuleSchema.Category, SoundCategory.Faults, CategoryData.Read);

    /// <param name="utf8">The file's bytes.</param>
    public static RuleFile<Dictionary<string, IReadOnlyList<string>>> Headings(ReadOnlyMemory<byte> utf8) =>
        Read<Dictionary<string, IReadOnlyList<string>>>(utf8, RuleSchema.Headings, _ => []);

    /// <param name="utf8">The file's bytes.</param>
    public static RuleFile<LetterheadFile> Letterhead(ReadOnlyMemory<byte> utf8) =>
        Read<LetterheadFile>(utf8, RuleSchema.Letterhead, _ => []);

    /// <param name="utf8">The file's bytes.</param>
    public static RuleFile<ListMapFile> Map(ReadOnlyMemory<byte> utf8) => Read<ListMapFile>(utf8, RuleSchema.Map, _ => []);

    /// <param name="utf8">The file's bytes.</param>
    public static RuleFile<SafetyNotice> Recall(ReadOnlyMemory<byte> utf8)
    {
        var (file, faults) = Read<SafetyNoticeFile>(utf8, RuleSchema.Recall, f => f.Faults);
        return new(file?.Notice, faults);
    }

    private static RuleFile<T> Read<T>(
        ReadOnlyMemory<byte> utf8,
        RuleSchema schema,
        Func<T, IReadOnlyList<string>> sound,
        Func<JsonElement, T>? read = null
    )
        where T : class
    {
        if (utf8.Length > MaxBytes)
            return Refused<T>(["the file is larger than 256 KiB; a rule file never needs to be"]);
        var (root, unreadable) = JsonTree.Parse(utf8);
        if (root is null)
            return Refused<T>([$"{unreadable}; put that place right, commas, quotes and brackets above all"]);
        var faults = Guard(root).Take(MostFaults).ToList();
        if (faults.Count > 0)
            return Refused<T>(faults);
        using var document = JsonDocument.Parse(WithoutMark(utf8));
        var broken = schema.Faults(document.RootElement);
        if (broken.Count > 0)
            return Refused<T>(broken);
        return Bind(document.RootElement, sound, read ?? (root => root.Deserialize<T>(RuleJson.Options)!));
    }

    private static RuleFile<T> Bind<T>(JsonElement root, Func<T, IReadOnlyList<string>> sound, Func<JsonElement, T> read)
        where T : class
    {
        try
        {
            var value = read(root);
            var faults = sound(value);
            return faults.Count == 0 ? new RuleFile<T>(value, []) : Refused<T>(faults);
        }
        catch (JsonException e)
        {
            return Refused<T>([$"{Pointer(e.Path)}: the value cannot be read; type what the schema asks for there, a day as 2026-05-11"]);
        }
    }

    private static string Pointer(string? path) =>
        (path ?? "$")
            .Replace("$", "", StringComparison.Ordinal)
            .Replace('.', '/')
            .Replace('[', '/')
            .Replace("]", "", StringComparison.Ordinal);

    /// <summary>What the schema cannot see: a member written twice, and characters that print as something else.</summary>
    private static IEnumerable<string> Guard(SourceNode node) =>
        node switch
        {
            ObjectNode o => o
                .Members.GroupBy(m => m.Key, StringComparer.Ordinal)
                .Where(g => g.Count() > 1)
                .Select(g => $"{o.Pointer}/{g.Key}: the member stands there twice; take one out")
                .Concat(o.Members.SelectMany(m => Guard(m.Value))),
            ListNode l => l.Elements.SelectMany(Guard),
            TextNode t when Objection(t.Text) is { } why => [$"{t.Pointer}: {why}; type it again on one line"],
            _ => [],
        };

    private static string? Objection(string text) =>
        text.AsSpan().IndexOfAny('\n', '\r', '\t') >= 0 ? "the text holds a line break or a tab" : TextGuard.Objection(text)?.Text;

    private static RuleFile<T> Refused<T>(IReadOnlyList<string> faults)
        where T : class =>
        new(
            null,
            faults.Count <= MostFaults
                ? faults
                : [.. faults.Take(MostFaults), string.Create(CultureInfo.InvariantCulture, $"and {faults.Count - MostFaults} more faults")]
        );

    private static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> utf8) =>
        utf8.Span.StartsWith(new byte[] { 0xEF, 0xBB, 0xBF }) ? utf8[3..] : utf8;
}
