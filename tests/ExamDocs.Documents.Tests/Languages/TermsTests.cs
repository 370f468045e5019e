using System.Text.Json;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Rules;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Languages;

/// <summary>What the program's own data hold has a translation in every language, and nothing else has.</summary>
public sealed class TermsTests
{
    public static TheoryData<string> Foreign => [.. Language.All.Select(l => l.Tag).Where(t => t != "en")];

    [Theory]
    [MemberData(nameof(Foreign))]
    public void Nothing_is_missing_and_nothing_is_left_over(string tag)
    {
        var terms = Read(tag);
        Assert.Equal([], Missing(terms));
        Assert.Equal(
            [],
            terms
                .Keys.Where(part => part is not ("phrases" or "rules"))
                .SelectMany(part => terms[part].Keys.Except(Wanted()[part], StringComparer.Ordinal))
        );
    }

    [Theory]
    [InlineData("categories", "rope-bridge")]
    [InlineData("criteria", "cover-cut")]
    [InlineData("texts", "for equipment that lifts persons")]
    [InlineData("rules", "PAR005")]
    public void A_missing_one_is_named(string part, string key)
    {
        var terms = Read("de");
        terms[part].Remove(key);
        Assert.Equal([$"{part}: {key}"], Missing(terms));
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public void No_translation_is_empty_or_still_English(string tag)
    {
        var terms = Read(tag);
        Assert.All(terms.Values.SelectMany(part => part), t => Assert.False(string.IsNullOrWhiteSpace(t.Value), t.Key));
        Assert.Equal([], terms.SelectMany(part => part.Value).Where(t => English.LeftIn(t.Value).Count > 0).Select(t => t.Value));
    }

    /// <summary>Every source that a reason or a finding can have, in the words of the language.</summary>
    [Theory]
    [MemberData(nameof(Foreign))]
    public void No_source_keeps_English_words(string tag)
    {
        var words = Language.Find(tag)!.Terms;
        var sources = Catalogue
            .All.SelectMany(c => c.Criteria)
            .Select(c => c.Source)
            .Concat(OutcomeRules.All.Select(r => r.Source))
            .Concat(RuleBook.All.Select(r => r.Info.Source))
            .Concat(RegimeIndex.All.SelectMany(r => r.Checks).Select(c => c.Source))
            .Concat(RegimeIndex.All.SelectMany(r => r.Intervals).SelectMany(p => p.Entries).Select(i => i.Source))
            .Concat(RegimeIndex.All.SelectMany(r => r.Retention).SelectMany(p => p.Entries).Select(k => k.Source))
            .Distinct(StringComparer.Ordinal)
            .ToList();
        Assert.True(sources.Count > 100, $"{sources.Count}");
        Assert.Equal([], sources.Select(words.Source).Where(s => English.LeftIn(s).Count > 0));
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public void Laws_are_cited_by_the_same_numbers(string tag)
    {
        var words = Language.Find(tag)!.Terms;
        Assert.All(OutcomeRules.All.Select(r => r.Source).Concat(RuleBook.All.Select(r => r.Info.Source)), source =>
            Assert.Equal(source.Where(char.IsDigit), words.Source(source).Where(char.IsDigit))
        );
    }

    private static Dictionary<string, Dictionary<string, string>> Read(string tag)
    {
        using var file = typeof(Terms).Assembly.GetManifestResourceStream($"terms/terms.{tag}.json")!;
        return JsonSerializer.Deserialize<Dictionary<string, Dictionary<string, string>>>(file)!;
    }

    private static IEnumerable<string> Missing(Dictionary<string, Dictionary<string, string>> terms) =>
        Wanted().SelectMany(part => part.Value.Where(key => !terms[part.Key].ContainsKey(key)).Select(key => $"{part.Key}: {key}"));

    private static Dictionary<string, List<string>> Wanted() =>
        new(StringComparer.Ordinal)
        {
            ["categories"] = [.. Catalogue.All.Select(c => c.Id)],
            ["criteria"] = [.. Catalogue.All.SelectMany(c => c.Criteria).Select(c => c.Id).Distinct(StringComparer.Ordinal)],
            ["questions"] = [.. Catalogue.All.SelectMany(c => c.Criteria).Select(c => c.Question).Distinct(StringComparer.Ordinal)],
            ["rules"] = [.. RuleBook.All.Select(r => r.Info.Code)],
            ["texts"] =
            [
                .. RegimeIndex
                    .All.SelectMany(Texts)
                    .Append("by the six-month basis of the examination")
                    .Append("by the examination scheme")
                    .Distinct(StringComparer.Ordinal),
            ],
        };

    /// <summary>What is printed of a regime's data; titles of laws that have none in the language stay as they are.</summary>
    private static IEnumerable<string> Texts(Regime regime) =>
        [
            .. regime.Intervals.SelectMany(p => p.Entries).Select(i => i.What),
            .. regime.Retention.SelectMany(p => p.Entries).Select(k => k.Words),
            .. regime.NotConfirmed,
            .. regime.Id is "de" or "fr" or "eu-en365" ? regime.Laws.SelectMany(p => p.Entries).Select(l => l.Title) : [],
        ];
}
