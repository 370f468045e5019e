using System.Text;

namespace ExamDocs.UseCases.Tests;

/// <summary>
/// The pages of the rules in one folder. The part above the marker is made from the rule's own text; what is below it
/// is written by hand and kept.
/// </summary>
internal sealed class RulePages(string folder, IReadOnlyList<RuleText> rules)
{
    public const string Marker = "<!-- Above: made from the rule's own text. Below: written by hand. -->";

    private const string Index = "README.md";

    /// <summary>What is wrong with the folder, one sentence a page; empty where every page is there and says what the rule says.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Wanted().Select(page => FaultOf(page.Name, page.Text)).OfType<string>(),
        .. Present().Except(Wanted().Select(p => p.Name), StringComparer.Ordinal).Select(name => $"{name} belongs to no rule"),
    ];

    public void Rewrite()
    {
        Directory.CreateDirectory(folder);
        foreach (var (name, text) in Wanted())
            File.WriteAllText(Path.Combine(folder, name), text + Marker + "\n" + ByHand(name));
    }

    private IEnumerable<string> Present() =>
        Directory.Exists(folder) ? Directory.EnumerateFiles(folder).Select(f => Path.GetFileName(f)) : [];

    private string? FaultOf(string name, string text)
    {
        var file = Path.Combine(folder, name);
        if (!File.Exists(file))
            return $"{name} is missing";
        var (made, _) = Split(file);
        return string.Equals(made, text, StringComparison.Ordinal) ? null : $"{name} says something else than the rule";
    }

    private string ByHand(string name)
    {
        var file = Path.Combine(folder, name);
        return File.Exists(file) ? Split(file).ByHand : "";
    }

    private static (string Made, string ByHand) Split(string file)
    {
        var text = File.ReadAllText(file).ReplaceLineEndings("\n");
        var at = text.IndexOf(Marker + "\n", StringComparison.Ordinal);
        return at < 0 ? (text, "") : (text[..at], text[(at + Marker.Length + 1)..]);
    }

    private IEnumerable<(string Name, string Text)> Wanted() =>
        rules.Select(r => ($"{r.Code}.md", Page(r))).Append((Index, Table()));

    private static string Page(RuleText rule)
    {
        var page = new StringBuilder();
        page.Append($"# {rule.Code}: {rule.Title}\n\n");
        page.Append($"{(rule.Outcome is null ? "Severity" : "Outcome")}: **{rule.Weight}**\n\n");
        page.Append($"**Why.** {rule.Why}\n\n");
        if (rule.Hint is not null)
            page.Append($"**What to type.** {rule.Hint}\n\n");
        page.Append($"**Source.** {rule.Source}\n\n");
        return page.ToString();
    }

    private string Table()
    {
        var page = new StringBuilder("# Rules\n\n| code | severity or outcome | rule |\n|---|---|---|\n");
        foreach (var rule in rules)
            page.Append($"| [{rule.Code}]({rule.Code}.md) | {rule.Weight} | {rule.Title.Replace("|", "\\|", StringComparison.Ordinal)} |\n");
        return page.Append('\n').ToString();
    }
}
