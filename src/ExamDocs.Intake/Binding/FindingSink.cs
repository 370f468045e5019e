using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Binding;

/// <summary>Collects what reading finds, so that everything is reported at once.</summary>
internal sealed class FindingSink
{
    /// <summary>Faults reported of one input, inclusive; who has more has something else wrong.</summary>
    public const int Most = 20_000;

    private readonly List<Finding> _findings = [];

    public IReadOnlyList<Finding> All => _findings;

    /// <exception cref="UnreadableWorkbookException">There are too many.</exception>
    public void Report(RuleInfo rule, string path, string message, string? hint = null, PossibleCause? cause = null)
    {
        _findings.Add(rule.At(path, message, hint) with { PossibleCause = cause });
        if (_findings.Count > Most)
            throw new UnreadableWorkbookException("the input has more than 20,000 faults");
    }
}
