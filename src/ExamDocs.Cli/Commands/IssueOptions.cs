using System.CommandLine;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <summary>What is said of documents that are to be issued, here or by whoever works at the register.</summary>
internal static class IssueOptions
{
    public static readonly Option<bool> PerItem = new("--per-item")
    {
        Description = "One report for each item instead of a schedule of all.",
    };

    public static readonly Option<string?> Only = new("--only")
    {
        Description = $"Only documents of this kind: {string.Join(", ", IssueDocuments.Kinds)}.",
        HelpName = "KIND",
    };

    public static readonly Option<string?> Reason = new("--reason")
    {
        Description =
            "Why an earlier version of the record is corrected; printed on the documents that replace those of the earlier version.",
        HelpName = "TEXT",
    };

    static IssueOptions() => Only.AcceptOnlyFromAmong([.. IssueDocuments.Kinds]);

    /// <summary>The reason as it is printed, without a full stop; null where none was typed.</summary>
    public static string? ReasonOf(ParseResult parsed) =>
        parsed.GetValue(Reason) is { } reason && !string.IsNullOrWhiteSpace(reason) ? reason.Trim().TrimEnd('.') : null;
}
