using System.Text.RegularExpressions;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook;

/// <summary>
/// Says what was found in the words of a sheet: who filled one in knows its headings, and nothing of the names that the record
/// format has for them.
/// </summary>
public static partial class SheetWords
{
    /// <summary>Lists, which have a sheet or several columns.</summary>
    private static readonly Dictionary<string, Message> Lists = new(StringComparer.Ordinal)
    {
        ["notTheSameAs"] = $"the sheet Not the same",
        ["readingsMm"] = Message.AsIs("readings"),
    };

    /// <summary>
    /// The heading of each member's column: of one that has several the first, as of safeWorkingLoad; the first sheet's, where
    /// several have it.
    /// </summary>
    private static readonly Dictionary<string, string> Headings = WorkbookShape
        .Known.SelectMany(s => s.Columns)
        .SelectMany(c =>
            new[] { c.Path[(c.Path.LastIndexOf('/') + 1)..], c.Path.Split('/')[0] }.Select(member => (Member: member, c.Heading))
        )
        .DistinctBy(h => h.Member, StringComparer.Ordinal)
        .ToDictionary(h => h.Member, h => h.Heading, StringComparer.Ordinal);

    private static readonly Message Yes = $"yes";

    private static readonly Message No = $"no";

    /// <param name="finding">As its rule says it.</param>
    /// <param name="sources">Where it was typed.</param>
    /// <returns>The same finding; where it was typed on a sheet, with the headings that stand there in its words.</returns>
    public static Finding Of(Finding finding, SourceMap sources)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(sources);
        if (!sources.IsOnSheet(finding.Path))
            return finding;
        var row = RecordPointer.ToRow(finding.Path) is var (list, number) ? FormattableString.Invariant($"/{list}/{number}") : null;
        return finding with { Message = finding.Message.Reworded(Said), Hint = finding.Hint.Reworded(Said) };

        string Said(MessageLanguage language, string text) =>
            Name().Replace(text, m => m.Value[0] is '\'' ? m.Value : Truth(m.Value, language) ?? Heading(m.Value, language) ?? m.Value);

        string? Heading(string member, MessageLanguage language) =>
            Lists.GetValueOrDefault(member)?.In(language)
            ?? (
                Headings.TryGetValue(member, out var heading)
                    ? (row is null ? null : sources.HeadingOf($"{row}/{member}")) ?? heading
                    : null
            );
    }

    /// <summary>A cell says yes or no where JSON says true or false.</summary>
    private static string? Truth(string word, MessageLanguage language) =>
        word switch
        {
            "true" => Yes.In(language),
            "false" => No.In(language),
            _ => null,
        };

    /// <summary>What was typed, in quotation marks, which stays as it is; or a name of several words written as one.</summary>
    [GeneratedRegex(
        @"(?<!\w)'[^']*'(?!\w)|\b(true|false)\b|(?<![\w/])[a-z]+([A-Z][a-z]*)+(?![\w/])",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Name();
}
