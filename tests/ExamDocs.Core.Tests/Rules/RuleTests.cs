using System.Text;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Rules;
using ExamDocs.Intake.Json;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>A rule is a validator too: both ways to ask it give the same faults in the same order.</summary>
public sealed class RuleTests
{
    [Fact]
    public void A_rule_that_is_run_as_a_validator_finds_what_checking_finds()
    {
        var found = RuleCases.All.SelectMany(FoundIn).ToList();

        Assert.InRange(found.Select(f => f.Code).Distinct(StringComparer.Ordinal).Count(), 60, RuleBook.All.Count);
    }

    private static IEnumerable<Finding> FoundIn(RuleCase slip)
    {
        var record = GoodRecord.Json();
        slip.Make(record);
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(record.ToJsonString()), "record.json").Record!;
        var context = new RecordContext(read, slip.History, GoodRecord.AsOf, slip.Rules);
        return [.. Both([context.Visit]), .. Both(context.Items), .. Both(context.Examinations)];
    }

    private static List<Finding> Both<T>(IReadOnlyList<T> subjects)
        where T : class, ICase
    {
        var all = new List<Finding>();
        foreach (var rule in RuleBook.All.OfType<Rule<T>>())
        {
            foreach (var subject in subjects)
            {
                var found = new List<Finding>();
                rule.Check(subject, found);
                // A validator is not asked whether it applies at all.
                var failures = found.Count == 0 ? [] : rule.Validate(subject).Errors;
                Assert.Equal(
                    found.Select(f => (f.Code, f.Message.Text)),
                    failures.Select(f => (f.ErrorCode, ((Fault)f.CustomState).Message.Text))
                );
                Assert.All(found.Zip(failures), pair =>
                    Assert.EndsWith(pair.Second.PropertyName, pair.First.Path, StringComparison.Ordinal)
                );
                all.AddRange(found);
            }
        }
        return all;
    }
}
