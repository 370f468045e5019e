using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake;

namespace ExamDocs.UseCases.Reading;

/// <summary>Reads a record to prepare the next visit from it.</summary>
internal static class EarlierRecord
{
    /// <param name="path">As <see cref="ReadInput.From"/> takes it.</param>
    /// <param name="rules">The categories and regimes it can name.</param>
    /// <param name="refused">Why nothing may be taken from it; null where it may.</param>
    public static ReadResult Read(string path, KnownRules rules, out string? refused)
    {
        var read = ReadInput.From(path, rules);
        refused =
            read.Unreadable is { } why ? $"{path}: unreadable: {why}"
            : read.Findings.FirstOrDefault(f => f.Severity is Severity.Error) is { } error
                ? $"{read.Sources.Locate(error.Path)}: {error.Message}. Put it right first: what was misread must not be handed on"
            : null;
        return read;
    }

    /// <summary>A sentence where one of these is no known category; else null.</summary>
    public static string? Unknown(IReadOnlyList<string> categories, KnownRules rules) =>
        categories.FirstOrDefault(c => rules.FindCategory(c) is null) is { } unknown
            ? $"there is no category '{unknown}'; examdocs criteria lists them"
            : null;
}
