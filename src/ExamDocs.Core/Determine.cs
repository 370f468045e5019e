using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Rules;
using NodaTime;

namespace ExamDocs.Core;

/// <summary>Determines whether each item of a record may stay in service: the worst reason wins.</summary>
public static class Determine
{
    /// <remarks>
    /// The order matters: the checks need to know what is withdrawn (a conclusion may not be kinder), and what leaves an item
    /// undetermined depends on what the checks find.
    /// </remarks>
    /// <param name="record">What was recorded.</param>
    /// <param name="intake">What reading found wrong with it.</param>
    /// <param name="history">What other records know of its items.</param>
    /// <param name="asOf">The day on which it is determined.</param>
    /// <param name="rules">The categories and regimes that it can name; if left out, the built-in ones.</param>
    public static DeterminedVisit Visit(
        ExaminationRecord record,
        IReadOnlyList<Finding> intake,
        History history,
        LocalDate asOf,
        KnownRules? rules = null
    )
    {
        var context = new RecordContext(record, history, asOf, rules);
        var verdicts = new Verdicts(context);
        Withdraw(context, verdicts);
        var findings = Check(context, verdicts, intake);
        Undetermine(context, verdicts);
        Limit(context, verdicts);
        return new DeterminedVisit(
            context,
            [.. context.Items.Select(i => new DeterminedItem(i, verdicts[i]))],
            [.. context.Unlisted.Where(s => verdicts[s].Outcome is Outcome.Withdraw).Select(s => new DeterminedItem(s, verdicts[s]))],
            findings,
            intake
        );
    }

    /// <summary>
    /// The reasons to withdraw the items of a record, as <see cref="Visit"/> gives them, without checking it and without what else a
    /// determination says.
    /// </summary>
    public static IReadOnlyList<Reason> ReasonsToWithdraw(ExaminationRecord record, History history, LocalDate asOf)
    {
        var context = new RecordContext(record, history, asOf);
        var verdicts = new Verdicts(context);
        Withdraw(context, verdicts);
        return [.. context.Items.SelectMany(i => verdicts[i].InOrder())];
    }

    private static void Withdraw(RecordContext context, Verdicts verdicts)
    {
        foreach (var item in context.Items.Concat(context.Unlisted))
        {
            var reasons = OutcomeRules.OfExamination.SelectMany(rule => item.Deciding.SelectMany(e => rule.Reasons(item, e))).ToList();
            AddNew(verdicts[item].Withdraw, reasons.Select(r => r.Reason));
            verdicts[item].NeverReleasableByItself = reasons.Exists(r => r.NeverReleasable);
            verdicts[item].NeverReleasable =
                verdicts[item].NeverReleasableByItself
                || EarlierWithdrawals.Of(item).Any(w => w.NeverReleasable && EarlierWithdrawals.IsOpen(item, w));
        }
        // A withdrawal that only repeats another counts in a second pass, and only where nothing else withdraws the item.
        for (var step = 0; step < 2; step++)
        {
            verdicts.EchoesCount = step == 1;
            UntilNothingChanges(context, item =>
                AddNew(verdicts[item].Withdraw, OutcomeRules.Withdrawing.SelectMany(r => r.Reasons(item, verdicts)))
            );
        }
    }

    private static IReadOnlyList<Finding> Check(RecordContext context, Verdicts verdicts, IReadOnlyList<Finding> intake)
    {
        var withdrawn = context
            .Items.Where(i => verdicts[i].Withdraw.Count > 0)
            .ToDictionary(i => i, i => (IReadOnlyList<Reason>)verdicts[i].Withdraw);
        var found = intake.Concat(RuleBook.Check(context, withdrawn)).ToList();
        var reached = found.ConvertAll(f => FindingReach.Of(f, context).ToList());
        var findings = FindingCauses.Tie([
            .. found.Select((f, n) => reached[n] is [var only] && f.Item is null ? f with { Item = only.Item.Id } : f),
        ]);
        foreach (var (n, finding) in findings.Index())
        {
            foreach (var item in reached[n])
                verdicts[item].Findings.Add(finding);
        }
        return findings;
    }

    private static void Undetermine(RecordContext context, Verdicts verdicts) =>
        UntilNothingChanges(context, item =>
            AddNew(verdicts[item].Undetermined, OutcomeRules.Undetermining.SelectMany(r => r.Reasons(item, verdicts)))
        );

    private static void Limit(RecordContext context, Verdicts verdicts) =>
        UntilNothingChanges(context, item => AddNew(verdicts[item].Until, OutcomeRules.Limiting.SelectMany(r => r.Days(item, verdicts))));

    /// <summary>
    /// Reasons pass from parts to wholes over any depth. No reason is ever taken back, so this ends. What is found of an item depends
    /// on itself and its parts: it is looked at again only where one of these has changed since.
    /// </summary>
    private static void UntilNothingChanges(RecordContext context, Func<ItemCase, bool> step)
    {
        HashSet<ItemCase> open = [.. context.Items];
        while (open.Count > 0)
        {
            foreach (var item in context.Items)
            {
                if (!open.Remove(item) || !step(item))
                    continue;
                open.Add(item);
                open.UnionWith(item.Wholes);
            }
        }
    }

    private static bool AddNew<T>(List<T> to, IEnumerable<T> found)
    {
        // Of most items nothing is found. What is found is added after the search, which may look at what was known before.
        HashSet<T>? known = null;
        List<T>? added = null;
        foreach (var one in found)
        {
            known ??= [.. to];
            if (known.Add(one))
                (added ??= []).Add(one);
        }
        to.AddRange(added ?? []);
        return added is not null;
    }
}
