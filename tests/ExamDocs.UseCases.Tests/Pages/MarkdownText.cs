using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Tests.Pages;

/// <summary>What of a Markdown page links: its links, and the places in it that a link can name.</summary>
internal static partial class MarkdownText
{
    /// <summary>Targets as written, of links, pictures, references and HTML; nothing from code.</summary>
    public static IReadOnlyList<string> Links(string text)
    {
        var prose = InlineCode().Replace(Fenced().Replace(text, ""), "");
        return [.. Link().Matches(prose).Select(m => m.Groups["target"].Value)];
    }

    /// <summary>Rule codes that are the whole text of a link, with its target.</summary>
    public static IReadOnlyList<(string Code, string Target)> RuleLinks(string text) =>
        [.. RuleLink().Matches(Fenced().Replace(text, "")).Select(m => (m.Groups["code"].Value, m.Groups["target"].Value))];

    /// <summary>Anchors: those that GitHub makes of headings, and those written as HTML.</summary>
    public static IReadOnlySet<string> Places(string text)
    {
        var prose = Fenced().Replace(text, "");
        var places = new HashSet<string>(HtmlPlace().Matches(prose).Select(m => m.Groups["id"].Value), StringComparer.Ordinal);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var slug in Heading().Matches(prose).Select(m => Slug(m.Groups["text"].Value)))
        {
            seen[slug] = seen.TryGetValue(slug, out var before) ? before + 1 : 0;
            places.Add(seen[slug] == 0 ? slug : $"{slug}-{seen[slug]}");
        }
        return places;
    }

    private static string Slug(string heading) =>
        string.Concat(
            LinkInHeading()
                .Replace(heading, "${text}")
                .Trim()
                .ToLowerInvariant()
                .Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_')
                .Select(c => c == ' ' ? '-' : c)
        );

    [GeneratedRegex(
        @"^ *(?<fence>```+|~~~+).*?^ *\k<fence> *$",
        RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Fenced();

    /// <summary>Within a paragraph: a single stray backtick hides no links further down.</summary>
    [GeneratedRegex("(?<ticks>`+)(.|\n(?!\n))+?\\k<ticks>", RegexOptions.ExplicitCapture)]
    private static partial Regex InlineCode();

    [GeneratedRegex(
        """\]\(\s*<?(?<target>[^)>\s]+)|^ *\[[^\]]+\]:\s*(?<target>\S+)|\s(href|src)="(?<target>[^"]*)["]""",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Link();

    [GeneratedRegex(@"\[`?(?<code>[A-Z]{1,3}\d+)`?\]\((?<target>[^)\s]+)\)", RegexOptions.ExplicitCapture)]
    private static partial Regex RuleLink();

    [GeneratedRegex("""<[^>]*\s(id|name)="(?<id>[^"]+)["]""", RegexOptions.ExplicitCapture)]
    private static partial Regex HtmlPlace();

    [GeneratedRegex(@"^#{1,6} +(?<text>.+?) *#*$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Heading();

    [GeneratedRegex(@"\[(?<text>[^\]]*)\]\([^)]*\)", RegexOptions.ExplicitCapture)]
    private static partial Regex LinkInHeading();
}
