using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Determination;

/// <summary>What was found so far about each item of one record; it only ever gets worse.</summary>
internal sealed class Verdicts(RecordContext context)
{
    private readonly Dictionary<ItemCase, Verdict> _verdicts = context
        .Items.Concat(context.Unlisted)
        .ToDictionary(i => i, _ => new Verdict());

    public Verdict this[ItemCase item] => _verdicts[item];

    public IReadOnlyList<ItemCase> Items => context.Items;

    /// <summary>
    /// True in the second pass, when all other reasons are known: then a withdrawal counts that another version of this visit's
    /// record has, or that only repeats an earlier one.
    /// </summary>
    public bool EchoesCount { get; set; }
}

/// <summary>What was found so far about one item.</summary>
internal sealed class Verdict
{
    public List<Reason> Withdraw { get; } = [];

    public List<Reason> Undetermined { get; } = [];

    public List<(LocalDate LastDay, Reason Reason)> Until { get; } = [];

    public bool NeverReleasable { get; set; }

    /// <summary>The same, for only what this examination found.</summary>
    public bool NeverReleasableByItself { get; set; }

    public List<Finding> Findings { get; } = [];

    public Outcome Outcome =>
        Withdraw.Count > 0 ? Outcome.Withdraw
        : Undetermined.Count > 0 ? Outcome.Undetermined
        : Until.Count > 0 ? Outcome.FitUntil
        : Outcome.Fit;

    /// <summary>The last day of use; null unless the outcome is fit-until.</summary>
    public LocalDate? LastDay => Outcome is Outcome.FitUntil ? Until.Min(u => u.LastDay) : null;

    /// <summary>Every reason, in the order of the rules; reasons for a last day only where the outcome has one.</summary>
    public IReadOnlyList<Reason> InOrder()
    {
        var until = Outcome is Outcome.FitUntil ? Until.Select(u => u.Reason) : [];
        return [.. Withdraw.Concat(Undetermined).Concat(until).OrderBy(r => OutcomeRules.PlaceOf(r.Code))];
    }
}
