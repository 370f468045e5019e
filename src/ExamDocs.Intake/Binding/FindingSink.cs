using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Binding;

/// <summary>Collects what reading finds, so that everything is reported at once.</summary>
internal sealed class FindingSink
{
    private readonly List<Finding> _findings = [];

    public IReadOnlyList<Finding> All => _findings;

    public void Report(RuleInfo rule, string path, string message, string? hint = null) =>
        _findings.Add(rule.At(path, message, hint));
}
