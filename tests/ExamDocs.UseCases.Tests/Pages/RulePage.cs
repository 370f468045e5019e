using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Pages;

/// <summary>One page as it is in the folder: its head, and a section for each rule.</summary>
/// <param name="Head">Title and contents.</param>
/// <param name="Sections">In the order of the page.</param>
internal sealed partial record RulePage(string Head, IReadOnlyList<RuleSection> Sections)
{
    public const string Marker = "<!-- Above: made from the rule's own text. Below: written by hand. -->";

    private const string TableHead = "| code | severity or outcome | rule |\n|---|---|---|\n";

    /// <summary>The page that the rules want.</summary>
    /// <param name="title">Heading of the page.</param>
    /// <param name="rules">The rules on it, in order.</param>
    /// <param name="byHand">What is written by hand for a code; empty where nothing is.</param>
    public static RulePage Of(string title, IReadOnlyList<RuleText> rules, Func<string, string> byHand) =>
        new(
            $"# {title}\n\n{Table(rules, _ => "")}\n[All rules](README.md)\n\n",
            [.. rules.Select(r => new RuleSection(r.Code, Made(r), byHand(r.Code)))]
        );

    /// <summary>A table of the rules, each code with a link to its section.</summary>
    /// <param name="rules">The rules, in order.</param>
    /// <param name="page">The page a rule is on; empty for the same page.</param>
    public static string Table(IEnumerable<RuleText> rules, Func<RuleText, string> page) =>
        TableHead
        + string.Concat(
            rules.Select(r =>
                $"| [{r.Code}]({page(r)}#{Anchor(r.Code)}) | {r.Weight} | {r.Title.Replace("|", "\\|", StringComparison.Ordinal)} |\n"
            )
        );

    public static RulePage Read(string text)
    {
        var starts = SectionStart().Matches(text);
        var ends = starts.Skip(1).Select(m => m.Index).Append(text.Length);
        return new(
            starts.Count == 0 ? text : text[..starts[0].Index],
            [.. starts.Zip(ends, (start, end) => Section(start.Groups["code"].Value.ToUpperInvariant(), text[start.Index..end]))]
        );
    }

    public override string ToString() =>
        Head + string.Join("\n", Sections.Select(s => $"{s.Made}{Marker}\n{(s.ByHand.Length == 0 ? "" : $"\n{s.ByHand}\n")}"));

    private static RuleSection Section(string code, string text)
    {
        var at = text.IndexOf(Marker, StringComparison.Ordinal);
        return at < 0 ? new(code, text, "") : new(code, text[..at], text[(at + Marker.Length)..].Trim('\n'));
    }

    private static string Made(RuleText rule)
    {
        var made = new StringBuilder();
        made.Append($"<a id=\"{Anchor(rule.Code)}\"></a>\n\n## {rule.Code}: {rule.Title}\n\n");
        made.Append($"{(rule.Outcome is null ? "Severity" : "Outcome")}: **{rule.Weight}**\n\n");
        made.Append($"**Why.** {rule.Why}\n\n");
        if (rule.Hint is not null)
            made.Append($"**What to type.** {rule.Hint}\n\n");
        made.Append($"**Source.** {rule.Source}\n\n");
        return made.ToString();
    }

    /// <summary>A heading's own anchor changes with the rule's title; this one stays.</summary>
    private static string Anchor(string code) => code.ToLowerInvariant();

    [GeneratedRegex("^<a id=\"(?<code>[a-z]{1,3}[0-9]+)\"></a>$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex SectionStart();
}

/// <summary>What a page says of one rule.</summary>
/// <param name="Code">The rule.</param>
/// <param name="Made">From the rule's own text, up to the marker.</param>
/// <param name="ByHand">Below the marker, without the blank lines around it.</param>
internal sealed record RuleSection(string Code, string Made, string ByHand);
