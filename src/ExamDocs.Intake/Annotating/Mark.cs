using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Annotating;

/// <summary>A cell to be marked, with everything that was found there.</summary>
/// <param name="Row">Counted from 1.</param>
/// <param name="Column">Counted from 1.</param>
/// <param name="Worst">The gravest severity of what was found.</param>
/// <param name="Texts">What to say of it, the gravest first.</param>
internal sealed record Mark(int Row, int Column, Severity Worst, IReadOnlyList<string> Texts)
{
    public static Mark Of((int Row, int Column) cell, IEnumerable<Finding> found, MessageLanguage language)
    {
        var sorted = found.OrderByDescending(f => f.Severity).ToList();
        return new(
            cell.Row,
            cell.Column,
            sorted[0].Severity,
            [.. sorted.Select(f => Words(f).In(language)).Distinct(StringComparer.Ordinal)]
        );
    }

    private static Message Words(Finding finding) =>
        $"{finding.Severity.InCapitals()} {finding.Code}{(finding.Item is { } id ? $" ({id})" : "")}: {finding.Message}.\n"
        + $"What to do: {finding.Hint}";
}
