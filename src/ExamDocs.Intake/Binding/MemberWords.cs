using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Binding;

/// <summary>Reads members that hold one of a few words. A misspelt word is no answer: it never counts as the good one.</summary>
internal static class MemberWords
{
    /// <summary>Says of the same answer which words its criterion allows.</summary>
    private const string AnswerNotAllowed = "CON016";

    /// <summary>One of a table's words; of two the worse.</summary>
    public static T? Word<T>(this Members members, string name, WordTable<T> words)
        where T : struct, Enum => WordAsTyped(members, name, words).Value;

    /// <summary>One of a table's words, none of which is the worse; null where it is written twice.</summary>
    public static T? WordOnce<T>(this Members members, string name, WordTable<T> words)
        where T : struct, Enum
    {
        var word = Word(members, name, words);
        return members.IsTwice(name) ? null : word;
    }

    /// <inheritdoc cref="Word"/>
    /// <param name="members">Where it stands.</param>
    /// <param name="name">The member.</param>
    /// <param name="words">The words it may hold.</param>
    /// <param name="listed">False where not every word of the table is allowed here, so that the list would mislead.</param>
    /// <param name="beginning">The adverse word that a text begins with; null where none is known by its beginning.</param>
    public static (string? Typed, T? Value) WordAsTyped<T>(
        this Members members,
        string name,
        WordTable<T> words,
        bool listed = true,
        Func<string, T?>? beginning = null
    )
        where T : struct, Enum
    {
        string? typed = null;
        T? worst = null;
        foreach (var member in members.TakeTyped(name))
        {
            typed = (member as TextNode)?.Text.Trim() ?? (member as NumberNode)?.Raw ?? "?";
            if (member is TextNode && words.Find(typed) is { } value)
                worst = Worse(words, worst, value);
            else if (member is TextNode text && beginning?.Invoke(typed) is { } adverse)
                worst = Worse(words, worst, ReportAdverse(members, text, adverse, words));
            else
                ReportUnknown(members, member, typed, words.All, listed);
        }
        return (typed, worst);
    }

    /// <summary>Text that must be one of the words given.</summary>
    public static string? OneOf(this Members members, string name, IReadOnlyList<string> words)
    {
        if (members.Text(name) is not { } typed)
            return null;
        if (words.Contains(typed, StringComparer.Ordinal))
            return typed;
        ReportUnknown(members, new TextNode($"{members.Pointer}/{name}", typed), typed, words, listed: true);
        return null;
    }

    private static T Worse<T>(WordTable<T> words, T? before, T value)
        where T : struct, Enum => before is { } known ? words.Worse(known, value) : value;

    private static T ReportAdverse<T>(Members members, TextNode typed, T adverse, WordTable<T> words)
        where T : struct, Enum
    {
        var shown = TextGuard.Cut(members.Guarded(typed, TextGuard.MaxText)!, Members.MostShown);
        members.Report(AnswerRules.AdverseWord, typed.Pointer, $"'{shown}' counts as {words.WordFor(adverse)}");
        return adverse;
    }

    private static void ReportUnknown(Members members, SourceNode member, string typed, IReadOnlyList<string> allowed, bool listed)
    {
        var near = SpellingSuggestion.Of(typed, allowed);
        var words = listed
            ? (Message)$"Allowed: {string.Join(", ", allowed)}."
            : $"The command examdocs criteria lists the words that each criterion allows.";
        members.Report(
            IntakeRules.UnknownWord,
            member.Pointer,
            $"'{TextGuard.Cut(typed, Members.MostShown)}' is not one of the allowed words",
            near is null ? words : (Message)$"Did you mean '{near}'? {words}",
            listed ? null : new PossibleCause(member.Pointer, AnswerNotAllowed)
        );
    }
}
