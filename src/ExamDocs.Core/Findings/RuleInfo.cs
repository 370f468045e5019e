namespace ExamDocs.Core.Findings;

/// <summary>What is always true of a rule, whatever it finds: the text of its page and of <c>examdocs rules CODE</c>.</summary>
/// <param name="Code">Never reused, for example PAR005.</param>
/// <param name="Severity">The severity of what it finds.</param>
/// <param name="Title">The rule as a sentence.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Hint">What to type instead.</param>
/// <param name="Source">The law, standard or practice behind it, with its confidence where it is from memory.</param>
public sealed record RuleInfo(string Code, Severity Severity, string Title, string Why, Message Hint, string Source)
{
    /// <summary>
    /// What it finds fault with does not count as it was typed: it counts as missing, or as the adverse word that it begins
    /// with. What other rules find at the same place then follows from it.
    /// </summary>
    public bool LosesValue { get; init; }

    /// <summary>A finding of this rule.</summary>
    /// <param name="path">JSON pointer into the record.</param>
    /// <param name="message">What is wrong here.</param>
    /// <param name="hint">What to type instead, where more can be said than in the rule's own hint; null for that one.</param>
    /// <param name="item">Id of the item it is about.</param>
    public Finding At(string path, Message message, Message? hint = null, string? item = null) =>
        new(Code, Severity, path, message, hint ?? Hint, Source) { Item = item, LostAt = LosesValue ? path : null };
}
