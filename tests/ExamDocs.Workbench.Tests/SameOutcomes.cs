using ExamDocs.UseCases.Commands;

namespace ExamDocs.Workbench.Tests;

/// <summary>All that a record is decided to be, to be compared with the same record that came another way.</summary>
internal static class SameOutcomes
{
    /// <summary>A line for each outcome with its reasons, and one for each finding.</summary>
    public static IReadOnlyList<string> Of(string file, string register)
    {
        var told = CheckAgainstRegister.All([file], OpenedWorkbench.Today, null, register).Single();
        return
        [
            .. told
                .Outcomes.OrderBy(o => o.Item, StringComparer.Ordinal)
                .Select(o => $"{o.Item} {o.Outcome} {o.Until} {o.NextExaminationBy} {string.Join(' ', o.Codes)}"),
            .. told.Findings.Select(f => $"{f.Item} {f.Code} {f.Severity}").Order(StringComparer.Ordinal),
        ];
    }
}
