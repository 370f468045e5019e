using ExamDocs.Core.Cases;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Determination;

/// <summary>What is always true of an outcome rule: the text of its page and of <c>examdocs rules CODE</c>.</summary>
/// <param name="Code">W1 to W11, U0 to U6 or D1 to D3.</param>
/// <param name="Title">The rule as a sentence.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Source">The law, standard or practice behind it.</param>
public sealed record OutcomeRuleInfo(string Code, string Title, string Why, string Source)
{
    internal Reason Because(Func<SentenceBook, string> say) => Because(new Sentence(say));

    internal Reason Because(Sentence said) => new(Code, said, Source);

    internal Reason Because(Func<SentenceBook, string> say, string source) => new(Code, new Sentence(say), source);
}

/// <summary>A rule with a code of its own.</summary>
internal interface IOutcomeRule
{
    OutcomeRuleInfo Info { get; }
}

/// <summary>A rule that finds reasons to withdraw in one examination by itself, of this visit or an earlier one.</summary>
internal interface IExaminationRule : IOutcomeRule
{
    IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination);
}

/// <summary>
/// A rule that finds reasons in an item together with its parts, its wholes and its history. Of verdicts it asks for the item's own and
/// those of its parts, for no other.
/// </summary>
internal interface IItemRule : IOutcomeRule
{
    IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts);
}

/// <summary>
/// A rule that finds the last day on which an otherwise fit item may be used. Of verdicts it asks for those of its parts alone.
/// </summary>
internal interface IUntilRule : IOutcomeRule
{
    IEnumerable<(LocalDate LastDay, Reason Reason)> Days(ItemCase item, Verdicts verdicts);
}

/// <param name="Reason">The reason itself.</param>
/// <param name="NeverReleasable">True where only a release of a record in error undoes a withdrawal for it.</param>
internal readonly record struct WithdrawalReason(Reason Reason, bool NeverReleasable = false);
