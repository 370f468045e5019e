using System.Runtime.CompilerServices;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>
/// Finds the column that a heading means: by its own name, or by another that is in common use or that the user gave. A
/// name of its own always comes first, so that another can never take a column away from it.
/// </summary>
internal sealed class HeadingWords
{
    private static readonly ConditionalWeakTable<KnownRules, HeadingWords> Made = [];

    private static readonly string[] NoteWords = ["note", "notes", "comment", "comments", "remark", "remarks"];

    private readonly Dictionary<string, string> _others;
    private readonly ConditionalWeakTable<SheetShape, Dictionary<string, Column>> _columns = [];

    private HeadingWords(KnownRules rules) => _others = ByOther(InCommonUse.Concat(rules.Headings));

    /// <summary>Other names of columns, from everyday spreadsheets: common practice, no source.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> InCommonUse { get; } =
        new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
        {
            ["id"] = ["item id", "item no", "item number", "identifier"],
            ["description"] = ["item description"],
            ["maker"] = ["manufacturer", "make", "maker's name"],
            ["model"] = ["model name"],
            ["part number"] = ["part no", "p/n"],
            ["serial"] = ["serial number", "serial no", "s/n"],
            ["owner's mark"] = ["owners mark", "owner mark"],
            ["manufactured"] = ["date of manufacture", "manufacture date", "manufactured on", "year of manufacture"],
            ["purchased"] = ["date of purchase", "purchase date"],
            ["first used"] = ["date of first use", "first use"],
            ["obsolete on"] = ["obsolescence date", "date of obsolescence"],
            ["safe working load"] = ["swl"],
            ["safe working load unit"] = ["swl unit"],
            ["last examined"] = ["last examination", "date of last examination"],
            ["examined on"] = ["date of examination", "examination date", "date examined"],
            ["examiner"] = ["examined by"],
            ["name"] = ["full name"],
            ["qualifications"] = ["qualification"],
            ["nominal diameter mm"] = ["nominal diameter"],
            ["position mm"] = ["position"],
        };

    /// <summary>The heading that each other name stands for, both as they are matched; of two the first.</summary>
    public static Dictionary<string, string> ByOther(IEnumerable<KeyValuePair<string, IReadOnlyList<string>>> words) =>
        words
            .SelectMany(h => h.Value.Select(other => (Other: Heading.Key(other), Name: Heading.Key(h.Key))))
            .DistinctBy(h => h.Other, StringComparer.Ordinal)
            .ToDictionary(h => h.Other, h => h.Name, StringComparer.Ordinal);

    public static HeadingWords Of(KnownRules rules) => Made.GetValue(rules, r => new HeadingWords(r));

    /// <summary>The column of a sheet that a typed heading means; null where it means none.</summary>
    public Column? Find(SheetShape shape, string typed)
    {
        var columns = Columns(shape);
        var key = Heading.Key(typed);
        if (columns.TryGetValue(key, out var own))
            return own;
        if (_others.TryGetValue(key, out var name) && columns.TryGetValue(name, out var other))
            return other;
        return NoteOf(key, columns);
    }

    /// <summary>The heading of a sheet that a mistyped one most resembles; null where none is near.</summary>
    public static string? Near(SheetShape shape, string typed) => NearColumn(shape.Columns, typed)?.Heading;

    /// <summary>The column whose heading a mistyped one most resembles; stars, hyphens and blanks count for nothing.</summary>
    public static Column? NearColumn(IEnumerable<Column> columns, string typed)
    {
        var byKey = columns
            .DistinctBy(c => Heading.Key(c.Heading), StringComparer.Ordinal)
            .ToDictionary(c => Heading.Key(c.Heading), StringComparer.Ordinal);
        return SpellingSuggestion.Of(Heading.Key(typed), byKey.Keys) is { } key ? byKey[key] : null;
    }

    /// <summary>"cover-cut remarks" is the note of cover-cut, and so is "comment" of a criterion that goes by another name.</summary>
    private Column? NoteOf(string key, Dictionary<string, Column> columns)
    {
        var end = key.LastIndexOf(' ');
        if (end < 0 || !NoteWords.Contains(key[(end + 1)..], StringComparer.Ordinal))
            return null;
        var about = key[..end];
        return columns.GetValueOrDefault($"{about} note")
            ?? (_others.TryGetValue(about, out var name) ? columns.GetValueOrDefault($"{name} note") : null);
    }

    private Dictionary<string, Column> Columns(SheetShape shape) =>
        _columns.GetValue(shape, s => s.Columns.ToDictionary(c => Heading.Key(c.Heading), StringComparer.Ordinal));
}
