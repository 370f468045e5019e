using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Pages;

/// <summary>
/// The pages of the rules in one folder, one for each family, and their index. In each section the part above the marker is
/// made from the rule's own text; what is below it is written by hand and kept.
/// </summary>
internal sealed class RulePages(string folder, IReadOnlyList<RuleText> rules, IReadOnlyList<RuleFamily> families)
{
    private const string Index = "README.md";

    /// <summary>What is wrong, one sentence each; empty where every rule has its section and each says what the rule says.</summary>
    public IReadOnlyList<string> Faults()
    {
        var unplaced = rules.Where(r => families.Count(f => f.Holds(r.Code)) != 1);
        var known = families.Select(f => f.Page).Append(Index);
        return
        [
            .. unplaced.Select(r => $"{r.Code} belongs to no page, or to several"),
            .. families.SelectMany(FaultsOf),
            .. FaultsOfIndex(),
            .. Present().Except(known, StringComparer.Ordinal).Select(name => $"{name} belongs to no rule"),
        ];
    }

    /// <summary>Writes all pages anew.</summary>
    /// <exception cref="InvalidOperationException">Something is written by hand for a rule that is not there any more.</exception>
    public void Rewrite()
    {
        var byHand = Present()
            .SelectMany(name => Read(name).Sections)
            .Where(s => s.ByHand.Length > 0)
            .ToDictionary(s => s.Code, s => s.ByHand, StringComparer.Ordinal);
        var lost = byHand.Keys.Except(rules.Select(r => r.Code), StringComparer.Ordinal).ToList();
        if (lost.Count > 0)
            throw new InvalidOperationException($"written by hand, and no rule: {string.Join(", ", lost)}");
        Directory.CreateDirectory(folder);
        foreach (var family in families)
            File.WriteAllText(PathOf(family.Page), Wanted(family, code => byHand.GetValueOrDefault(code, "")).ToString());
        File.WriteAllText(PathOf(Index), IndexText());
    }

    private IEnumerable<string> FaultsOf(RuleFamily family)
    {
        if (!File.Exists(PathOf(family.Page)))
            return [$"{family.Page} is missing"];
        var read = Read(family.Page);
        var wanted = Wanted(family, code => read.Sections.FirstOrDefault(s => s.Code == code)?.ByHand ?? "");
        if (string.Equals(wanted.ToString(), read.ToString(), StringComparison.Ordinal))
            return [];
        var altered = wanted.Sections.Except(read.Sections).ToList();
        return altered.Count > 0
            ? altered.Select(s => $"{family.Page} says something else of {s.Code} than the rule")
            : [$"{family.Page} has another head, order or section than the rules"];
    }

    private IEnumerable<string> FaultsOfIndex() =>
        !File.Exists(PathOf(Index)) ? [$"{Index} is missing"]
        : string.Equals(TextOf(Index), IndexText(), StringComparison.Ordinal) ? []
        : [$"{Index} says something else than the rules"];

    private RulePage Wanted(RuleFamily family, Func<string, string> byHand) =>
        RulePage.Of(family.Title, [.. rules.Where(r => family.Holds(r.Code))], byHand);

    private string IndexText()
    {
        var pages = families.Select(f => $"| [{f.Title}]({f.Page}) | {f.Codes} |\n");
        var all = RulePage.Table(rules, r => families.FirstOrDefault(f => f.Holds(r.Code))?.Page ?? "");
        return $"# Rules\n\n| page | codes |\n|---|---|\n{string.Concat(pages)}\n{all}";
    }

    private IEnumerable<string> Present() =>
        Directory.Exists(folder) ? Directory.EnumerateFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal) : [];

    private RulePage Read(string name) => RulePage.Read(TextOf(name));

    private string TextOf(string name) => File.ReadAllText(PathOf(name)).ReplaceLineEndings("\n");

    private string PathOf(string name) => Path.Combine(folder, name);
}
