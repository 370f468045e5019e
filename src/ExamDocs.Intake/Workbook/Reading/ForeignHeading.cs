using System.Text.RegularExpressions;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>What a heading is that is none of the sheet's.</summary>
internal enum ForeignHeading
{
    /// <summary>The user's own: what stands below it says nothing of how the kit is.</summary>
    Own,

    /// <summary>A pass or a fail stands below it, of which nobody knows what was examined.</summary>
    Results,

    /// <summary>A misspelt heading of the sheet, or one that has more words.</summary>
    NearOurs,

    /// <summary>What stands below it may say how the kit is.</summary>
    MaySayMore,
}

/// <summary>Tells them apart, in three languages; what is not plainly the user's own is not passed over.</summary>
internal static partial class ForeignHeadings
{
    /// <summary>Headings with fewer letters stand in too many others.</summary>
    private const int ShortestWithin = 4;

    private static readonly HashSet<string> Results = new(
        [
            "result",
            "results",
            "pass/fail",
            "pass / fail",
            "pass fail",
            "p/f",
            "pass",
            "passed",
            "outcome",
            "verdict",
            "test result",
            "ergebnis",
            "prüfergebnis",
            "bestanden",
            "bestanden/nicht bestanden",
            "résultat",
            "resultat",
            "conforme",
            "conformité",
            "conforme/non conforme",
        ],
        StringComparer.Ordinal
    );

    /// <param name="typed">The heading.</param>
    /// <param name="shape">The sheet.</param>
    public static ForeignHeading Of(string typed, SheetShape shape)
    {
        if (Results.Contains(Heading.Normal(typed).TrimEnd(':', '?', '.')))
            return ForeignHeading.Results;
        var key = Heading.Key(typed);
        var names = shape.Columns.Select(c => Heading.Key(c.Heading)).Concat(OthersOf(shape)).ToList();
        if (HeadingWords.Near(shape, typed) is not null || IsNear(key, OthersOf(shape)) || names.Exists(name => IsWithin(name, key)))
            return ForeignHeading.NearOurs;
        return SaysMore().IsMatch(typed) || AnswerWords.IsIn(typed) || !typed.Any(char.IsLetterOrDigit)
            ? ForeignHeading.MaySayMore
            : ForeignHeading.Own;
    }

    /// <summary>The other names of its columns that are in common use.</summary>
    private static IEnumerable<string> OthersOf(SheetShape shape) =>
        HeadingWords
            .InCommonUse.Where(h => shape.Columns.Any(c => string.Equals(c.Heading, h.Key, StringComparison.Ordinal)))
            .SelectMany(h => h.Value.Select(Heading.Key));

    private static bool IsNear(string key, IEnumerable<string> names) =>
        SpellingSuggestion.Of(key, names.Where(name => name.Length >= ShortestWithin)) is not null;

    private static bool IsWithin(string ours, string key) =>
        ours.Length >= ShortestWithin && $" {key} ".Contains($" {ours} ", StringComparison.Ordinal);

    [GeneratedRegex(
        @"(?<!\p{L})(notes?|remarks?|comments?|observations?|findings?|conditions?|state|issues?|problems?|visual|check|inspect|test|exam"
            + @"|action|reason|repair|wear|bemerk|anmerk|notiz|hinweis|befund|zustand|kommentar|prüf|maßnahm|grund|repar|kontroll"
            + @"|remarque|commentaire|état|etat|constat|contrôl|vérif|mesure|motif|répar|usure"
            + @"|service|safe|usable|in use|fit\b|ok\b|released?|decision|disposition"
            + @"|judge?ment|good|bad|end of life|max date|drops?\b|falls?\b"
            + @"|shock|incident|accident|event|rmks|obs|memo|to do|follow|next step|grade|score|rating|legend|traffic light"
            + @"|einsatz|verwendbar|brauchbar|freigabe|entscheid|urteil|beurteil|bewert|sperr|ablauf|lebensdauer|sturz|bem\b|anm\b|vermerk"
            + @"|verschlei|ampel|außer|ausser|apte|aptitude|décision|avis|péremption|fin de vie|chute|choc|bon\b|mauvais)",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex SaysMore();
}
