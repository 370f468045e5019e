using System.Text.RegularExpressions;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Vocabulary;

/// <summary>The note of an answer, in its cell or in a place of its own.</summary>
internal static partial class AnswerNote
{
    /// <summary>
    /// Whether an answer that is not adverse has a note that gives another: by its word at the beginning, after clear by an adverse
    /// one anywhere. A "no" before it makes no difference, because who found nothing types clear alone.
    /// </summary>
    /// <param name="state">The word of the answer, as the format has it.</param>
    /// <param name="note">The note; empty for none.</param>
    public static bool NamesAnother(string state, string note) =>
        note.Length > 0
        && state is not ("defect" or "doubt")
        && (
            (
                OtherFirst().Match(note) is { Success: true } first
                && !string.Equals(first.Groups["word"].Value, state, StringComparison.OrdinalIgnoreCase)
            )
            || (
                Synonyms.Find(FirstPart().Match(note).Value, Words.States.All) is { } other
                && !string.Equals(other.Word, state, StringComparison.Ordinal)
            )
            || (state is "clear" && AnswerWords.IsIn(note) && !AnswerWords.IsGood(note))
        );

    /// <summary>
    /// Whether a note in a place of its own takes back what the answer says. There people write "no damage" beside clear, so an
    /// adverse word right behind a "no" counts for nothing; and of noted, which says that something was seen, only the bare word of
    /// another answer is one.
    /// </summary>
    /// <inheritdoc cref="NamesAnother"/>
    public static bool TakesBack(string state, string note) =>
        state switch
        {
            "noted" => Synonyms.Find(note, Words.States.All) is { } other && other.Word is not "noted",
            "clear" or "no-sign" => NamesAnother(state, Negated().Replace(note, "")) || AnswerWords.IsAdverse(Negated().Replace(note, "")),
            _ => NamesAnother(state, note),
        };

    /// <summary>A word that says that there is none, with the word behind it.</summary>
    [GeneratedRegex(
        @"(?<!\p{L})(no|without|free of|free from|kein(e[mnrs]?)?|ohne|aucune?|sans|pas de|pas d['\u2019])\s*"
            + @"(signs? of |visible |sichtbare[nrs]? |trace de )?(?<!\p{L})\p{L}+",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Negated();

    [GeneratedRegex(
        @"\A\W*(?<word>(defect|doubt|withdr)|(clear|noted|no-sign|not-examined|not-applicable)\b)",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex OtherFirst();

    /// <summary>The note up to its first mark.</summary>
    [GeneratedRegex(@"\A[^,;:()!?\u2013\u2014]*", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex FirstPart();
}
