using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Binding;

/// <summary>Collects what reading finds, so that everything is reported at once.</summary>
internal sealed class FindingSink
{
    /// <summary>Faults reported of one input, inclusive; who has more has something else wrong.</summary>
    public const int Most = 20_000;

    /// <summary>Of placeholders so many are named; a dash in every row of a large list is no reason to refuse it.</summary>
    private const int MostPlaceholders = 2_000;

    private readonly List<Finding> _findings = [];
    private int _placeholders;

    public IReadOnlyList<Finding> All => _findings;

    /// <exception cref="UnreadableWorkbookException">There are too many.</exception>
    public void Report(RuleInfo rule, string path, Message message, Message? hint = null, PossibleCause? cause = null)
    {
        if (ReferenceEquals(rule, PlaceholderRules.StandsForNothing) && ++_placeholders > MostPlaceholders)
            return;
        _findings.Add(rule.At(path, message, hint) with { PossibleCause = cause });
        if (_findings.Count > Most)
            throw new UnreadableWorkbookException("the input has more than 20,000 faults");
    }

    /// <summary>Says how many placeholders were not named one by one.</summary>
    public void Finish()
    {
        if (_placeholders > MostPlaceholders)
            _findings.Add(
                PlaceholderRules.StandsForNothing.At("", $"{_placeholders - MostPlaceholders} more values are missing in the same way")
            );
    }
}
