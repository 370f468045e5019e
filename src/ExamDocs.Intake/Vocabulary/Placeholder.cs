using System.Buffers;
using System.Text.RegularExpressions;
using static ExamDocs.Intake.Vocabulary.Language;

namespace ExamDocs.Intake.Vocabulary;

/// <summary>What a text that stands for a missing value says of the value.</summary>
internal enum PlaceholderKind
{
    /// <summary>There is none: n/a, none, a dash.</summary>
    NoValue,

    /// <summary>There is one, and nobody knows it or has typed it yet: unknown, illegible, tbc, a question mark.</summary>
    NotKnown,

    /// <summary>It is that of another cell: as above, ditto.</summary>
    AsAbove,

    /// <summary>It may be a mark as well as a stand-in: X, NA, 0.</summary>
    Unclear,
}

/// <summary>Texts that are typed where there is no value: none of them is a serial, a name, an address, a date or a number.</summary>
internal static partial class Placeholder
{
    /// <summary>Every word with its languages, in lower case.</summary>
    public static IReadOnlyList<(PlaceholderKind Kind, Language Language, string[] Words)> All { get; } =
    [
        (PlaceholderKind.NoValue, English, ["n/a", "n.a.", "n. a.", "none", "nil", "not applicable", "null", "no", "nothing", "without"]),
        (
            PlaceholderKind.NoValue,
            English,
            ["no serial", "no serial number", "not marked", "unmarked", "none marked", "not fitted", "empty"]
        ),
        (PlaceholderKind.NoValue, German, ["keine", "kein", "keiner", "ohne", "entfällt", "nicht vorhanden", "k.a.", "k. a.", "nichts"]),
        (PlaceholderKind.NoValue, German, ["keine angabe", "keine nummer", "ohne nummer", "nicht anwendbar", "nicht markiert", "leer"]),
        (
            PlaceholderKind.NoValue,
            French,
            ["aucun", "aucune", "néant", "neant", "sans", "sans objet", "sans numéro", "pas de numéro", "vide"]
        ),
        (PlaceholderKind.NoValue, French, ["non applicable", "non marqué", "rien", "s/o", "non renseigné"]),
        (
            PlaceholderKind.NotKnown,
            English,
            ["unknown", "not known", "illegible", "unreadable", "not readable", "not legible", "undefined"]
        ),
        (
            PlaceholderKind.NotKnown,
            English,
            ["tbc", "t.b.c.", "tba", "t.b.a.", "tbd", "to be confirmed", "to be advised", "pending", "missing"]
        ),
        (
            PlaceholderKind.NotKnown,
            English,
            ["to follow", "not recorded", "not available", "not sure", "nan", "to do", "todo", "don't know"]
        ),
        (
            PlaceholderKind.NotKnown,
            German,
            ["unbekannt", "unleserlich", "nicht lesbar", "unlesbar", "nicht bekannt", "fehlt", "offen", "folgt"]
        ),
        (PlaceholderKind.NotKnown, German, ["wird nachgereicht", "noch offen", "nicht erfasst", "nicht leserlich", "weiß nicht", "unklar"]),
        (PlaceholderKind.NotKnown, French, ["inconnu", "inconnue", "illisible", "non lisible", "non connu", "à définir", "à compléter"]),
        (PlaceholderKind.NotKnown, French, ["à confirmer", "à venir", "manquant", "manque", "pas connu", "effacé", "effacée"]),
        (
            PlaceholderKind.AsAbove,
            English,
            ["as above", "see above", "ditto", "do.", "same", "same as above", "as before", "the same", "as last"]
        ),
        (PlaceholderKind.AsAbove, German, ["dito", "wie oben", "siehe oben", "s.o.", "s. o.", "gleich", "dasselbe", "ebenso", "wie zuvor"]),
        (PlaceholderKind.AsAbove, French, ["idem", "comme ci-dessus", "voir ci-dessus", "ci-dessus", "pareil", "le même", "la même"]),
        (PlaceholderKind.Unclear, English, ["x", "na", "nd", "nk", "o", "s/n", "sn", "no.", "nr", "nr.", "n°"]),
        (PlaceholderKind.Unclear, German, ["ka", "nb"]),
        (PlaceholderKind.Unclear, French, ["nc", "n.c.", "n.d.", "so", "ns"]),
    ];

    private static readonly SearchValues<char> Marks = SearchValues.Create(
        "-\u2010\u2011\u2012\u2013\u2014\u2212?._*\"'\u2019\u201C\u201D\u2033\u3003/\\~=#\u2026 "
    );

    private static readonly char[] Around = [' ', '(', ')', '[', ']', '<', '>', '{', '}', '"', '\u201C', '\u201D', '\u201E', '-', '*', '_'];

    /// <summary>After one of these a mark may go on and is still none: "unknown (label gone)".</summary>
    private static readonly string[] Beginnings =
    [
        "n/a",
        "none",
        "unknown",
        "not known",
        "illegible",
        "unreadable",
        "not readable",
        "not legible",
        "not marked",
        "no serial",
        "tbc",
        "tba",
        "as above",
        "ditto",
        "unbekannt",
        "unleserlich",
        "nicht lesbar",
        "unlesbar",
        "keine nummer",
        "siehe oben",
        "wie oben",
        "inconnu",
        "illisible",
        "non lisible",
        "sans numéro",
        "aucun",
        "voir ci-dessus",
        "idem",
    ];

    private static readonly Dictionary<string, PlaceholderKind> ByKey = All.SelectMany(row =>
            row.Words.Select(word => (Key: Key(word), row.Kind))
        )
        .DistinctBy(w => w.Key, StringComparer.Ordinal)
        .ToDictionary(w => w.Key, w => w.Kind, StringComparer.Ordinal);

    private static readonly int Longest = ByKey.Keys.Max(k => k.Length) + 8;

    /// <summary>Null where the text may be a value.</summary>
    public static PlaceholderKind? Of(string typed)
    {
        if (typed.Length > Longest || typed.Length == 0)
            return null;
        if (typed.AsSpan().IndexOfAnyExcept(Marks) < 0)
            return OfMarks(typed);
        var key = Key(typed);
        if (ByKey.TryGetValue(key, out var kind) || ByKey.TryGetValue(key.TrimEnd('.'), out kind))
            return kind;
        if (key.Length > 1 && key.AsSpan().IndexOfAnyExcept('x') < 0)
            return PlaceholderKind.NotKnown;
        return key.Length > 0 && key.AsSpan().IndexOfAnyExcept('0') < 0 ? PlaceholderKind.Unclear : null;
    }

    /// <summary>As <see cref="Of"/>, of a mark: one that begins with such a word and goes on is none either.</summary>
    public static PlaceholderKind? OfMark(string typed)
    {
        if (Of(typed) is { } whole)
            return whole;
        var key = Key(typed);
        return Array.Exists(Beginnings, b =>
            key.Length > b.Length && key.StartsWith(b, StringComparison.Ordinal) && !char.IsLetterOrDigit(key[b.Length])
        )
            ? PlaceholderKind.Unclear
            : null;
    }

    /// <summary>Marks alone: dashes say that there is none, question marks that it is not known, ditto marks that it is as above.</summary>
    private static PlaceholderKind? OfMarks(string typed)
    {
        var marks = typed.Where(c => c != ' ').Distinct().ToList();
        if (marks.Contains('?'))
            return PlaceholderKind.NotKnown;
        if (marks.Count == 1 && "\"'\u2019\u201C\u201D\u2033\u3003".Contains(marks[0], StringComparison.Ordinal))
            return PlaceholderKind.AsAbove;
        if (marks.Count == 1 && marks[0] is '.' or '\u2026')
            return PlaceholderKind.NotKnown;
        return marks.Count <= 2 ? PlaceholderKind.NoValue : null;
    }

    /// <summary>In lower case, with single blanks, without brackets and quotes around it and marks at its end.</summary>
    private static string Key(string typed)
    {
        var text = WithSingleBlanks(typed).Replace('\u2019', '\'').Trim(Around).ToLowerInvariant();
        return text.Replace(" / ", "/", StringComparison.Ordinal).TrimEnd('!', ',', ';', ':', '?').Trim();
    }

    private static string WithSingleBlanks(string typed)
    {
        // Most texts have no others, and are not searched for them by an expression.
        for (var i = 0; i < typed.Length; i++)
        {
            if (char.IsWhiteSpace(typed[i]) && (typed[i] != ' ' || (i > 0 && typed[i - 1] == ' ')))
                return Blanks().Replace(typed, " ");
        }
        return typed;
    }

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Blanks();
}
