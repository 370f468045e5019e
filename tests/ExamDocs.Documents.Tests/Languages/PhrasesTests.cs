using System.Text.RegularExpressions;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Documents.Tests.Languages;

/// <summary>Every phrase of every language: there, with its values, and in that language.</summary>
public sealed partial class PhrasesTests
{
    /// <summary>Sentences that need a measured profile or the like; the documents printed in each language hold them.</summary>
    private const int MostWithoutValues = 30;

    public static TheoryData<string> Tags => [.. Language.All.Select(l => l.Tag)];

    public static TheoryData<string> Foreign => [.. Language.All.Select(l => l.Tag).Where(t => t != "en")];

    [Theory]
    [MemberData(nameof(Tags))]
    public void No_phrase_is_empty(string tag)
    {
        var said = All(tag).ToList();
        Assert.True(said.Count > 600, $"{said.Count}");
        Assert.DoesNotContain(said, s => string.IsNullOrWhiteSpace(s.Text));
    }

    [Fact]
    public void Few_phrases_are_left_to_the_documents() =>
        Assert.InRange(Members().Count(m => !Books.Say(Language.English, m.Book, m.Member).Any()), 0, MostWithoutValues);

    /// <summary>A value that English prints is printed by every language, and no language prints one that English does not.</summary>
    [Theory]
    [MemberData(nameof(Foreign))]
    public void No_value_is_lost_in_translation(string tag)
    {
        var language = Language.Find(tag)!;
        var lost = Members()
            // Small labels write the day in numbers where a language's months are long.
            .Where(m => m.Member.Name is not "ShortDay")
            .SelectMany(m =>
                Books
                    .Say(Language.English, m.Book, m.Member)
                    .Zip(Books.Say(language, m.Book, m.Member))
                    .Where(pair => !Held(pair.First).SequenceEqual(Held(pair.Second)))
                    .Select(pair => $"{pair.First.Call}: {pair.First.Text} | {pair.Second.Text}")
            )
            .ToList();
        Assert.Equal([], lost);
    }

    [Fact]
    public void A_lost_value_would_be_seen() => Assert.NotEqual(Held(("", "a «0§»", ["«0§»"])), Held(("", "a", ["«0§»"])));

    [Theory]
    [MemberData(nameof(Foreign))]
    public void Nothing_is_left_in_English(string tag) =>
        Assert.Equal([], All(tag).Where(s => English.LeftIn(s.Text).Count > 0).Select(s => $"{s.Call}: {s.Text}"));

    [Theory]
    [MemberData(nameof(Foreign))]
    public void Every_regime_is_worded(string tag)
    {
        var words = RegimePhrases.Languages.In(Language.Find(tag)!);
        Regime?[] regimes = [null, .. RegimeIndex.All];
        foreach (var (translated, english) in regimes.Select(r => (words.Of(r), RegimePhrases.Languages.English.Of(r))))
        {
            string[] texts =
            [
                translated.Title,
                translated.Law,
                translated.ShortLaw,
                translated.Examination,
                translated.DutyNow,
                translated.DutyLater,
                translated.NoticeLead,
                .. translated.Bases.Values,
                .. translated.BasesByName.Values,
                .. translated.Authorities.Values,
            ];
            Assert.All(texts, t => Assert.Equal([], English.LeftIn(t)));
            Assert.Equal(english.Bases.Keys.Order(), translated.Bases.Keys.Order());
            Assert.Equal(english.BasesByName.Keys.Order(), translated.BasesByName.Keys.Order());
            Assert.Equal(english.Authorities.Keys.Order(), translated.Authorities.Keys.Order());
            Assert.Equal(english.HasKeys, translated.HasKeys);
            Assert.Equal(Numbers(english.DutyNow), Numbers(translated.DutyNow));
            Assert.Equal(Numbers(english.NoticeLead), Numbers(translated.NoticeLead));
            Assert.NotEqual(english.DutyNow, translated.DutyNow);
        }
    }

    // The French put a space that does not break before : ; ! ? % and inside their quotation marks.
    [Fact]
    public void French_keeps_its_punctuation_with_the_word()
    {
        var french = RegimePhrases.Languages.French;
        var regimes = RegimeIndex.All.Select(french.Of).SelectMany(r => new[] { r.Law, r.DutyNow, r.DutyLater, r.NoticeLead });
        Assert.Equal(
            [],
            All("fr").Select(s => s.Text).Concat(regimes).Where(t => Breaking().IsMatch(t.Replace("(«", "", StringComparison.Ordinal)))
        );
    }

    [Theory]
    [InlineData("Motif: usure")]
    [InlineData("Motif : usure")]
    [InlineData("« usure »")]
    public void A_breaking_space_would_be_seen(string text) => Assert.Matches(Breaking(), text);

    private static IEnumerable<string> Numbers(string text) =>
        Regex
            .Matches(text, @"\d+(\(\w+\))*", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1))
            .Select(m => m.Value)
            .Order(StringComparer.Ordinal);

    private static IEnumerable<string> Held((string Call, string Text, IReadOnlyList<string> Values) said) =>
        said.Values.Select((value, at) => $"{at}:{said.Text.Contains(value, StringComparison.Ordinal)}");

    private static IEnumerable<(string Call, string Text, IReadOnlyList<string> Values)> All(string tag) =>
        Members().SelectMany(m => Books.Say(Language.Find(tag)!, m.Book, m.Member));

    private static IEnumerable<(string Book, System.Reflection.MemberInfo Member)> Members() =>
        Books.Of(Language.English).Keys.SelectMany(book => Books.Members(book).Select(member => (book, member)));

    [GeneratedRegex(@"[\p{L}»\d)][:;!?](\s|$)|[ ][:;!?%»]|«[ ]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Breaking();
}
