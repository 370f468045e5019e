using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Determination;

/// <summary>What has been found out so far about each item of one record; it only ever grows worse.</summary>
internal sealed class Verdicts(RecordContext context)
{
    private readonly Dictionary<ItemCase, Verdict> _verdicts = context
        .Items.Concat(context.Unlisted)
        .ToDictionary(i => i, _ => new Verdict());

    public Verdict this[ItemCase item] => _verdicts[item];

    public IReadOnlyList<ItemCase> Items => context.Items;

    /// <summary>
    /// All else is said: what other versions of this visit's record withdrew, and what derives from another withdrawal, counts now.
    /// </summary>
    public bool EchoesCount { get; set; }
}

/// <summary>The growing verdict on one item.</summary>
internal sealed class Verdict
{
    public List<Reason> Withdraw { get; } = [];

    public List<Reason> Undetermined { get; } = [];

    public List<(LocalDate LastDay, Reason Reason)> Until { get; } = [];

    public bool NeverReleasable { get; set; }

    /// <summary>For what this examination found alone.</summary>
    public bool NeverReleasableByItself { get; set; }

    public List<Finding> Findings { get; } = [];

    public Outcome Outcome =>
        Withdraw.Count > 0 ? Outcome.Withdraw
        : Undetermined.Count > 0 ? Outcome.Undetermined
        : Until.Count > 0 ? Outcome.FitUntil
        : Outcome.Fit;

    /// <summary>The last day of use; null unless the outcome is fit-until.</summary>
    public LocalDate? LastDay => Outcome is Outcome.FitUntil ? Until.Min(u => u.LastDay) : null;

    /// <summary>Every reason that holds, in the order of the rules; those for a last day only where the outcome has one.</summary>
    public IReadOnlyList<Reason> InOrder()
    {
        var until = Outcome is Outcome.FitUntil ? Until.Select(u => u.Reason) : [];
        return [.. Withdraw.Concat(Undetermined).Concat(until).OrderBy(r => OutcomeRules.PlaceOf(r.Code))];
    }
}
