using ExamDocs.Core.Records;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.Tests.Vocabulary;

/// <summary>What stands where nothing is read is passed over only if it says nothing of how an item is.</summary>
public sealed class AnswerWordsTests
{
    [Fact]
    public void Every_bad_answer_of_the_tables_is_noticed_wherever_it_stands()
    {
        var bad = Synonyms.All.Where(s => s.Word is "defect" or "doubt" or "withdraw").SelectMany(s => s.Others);
        foreach (var word in bad.Append("defect").Append("doubt").Append("withdraw"))
            Assert.True(AnswerWords.IsIn(word), word);
        foreach (
            var word in (string[])
                ["defect", "Mangel", "défaut", "doubt", "Zweifel", "douteux", "withdrawn", "ausgesondert", "rebut", "FAIL"]
        )
            Assert.True(AnswerWords.IsIn($"shelf 3, {word} at the eye"), word);
    }

    [Fact]
    public void Every_good_answer_alone_is_noticed_too()
    {
        var answers = Synonyms
            .All.Where(s => s.Word is "clear" or "noted" or "no-sign" or "not-examined" or "fit")
            .SelectMany(s => s.Others);
        foreach (var word in answers.Concat(Words.States.All.Except(["not-applicable"], StringComparer.Ordinal)))
            Assert.True(AnswerWords.IsIn(word), word);
    }

    [Theory]
    [InlineData("Shelf 3")]
    [InlineData("Fitton yard")]
    [InlineData("red")]
    [InlineData("Regal 7, links")]
    [InlineData("étagère 2")]
    [InlineData("42")]
    [InlineData("n/a")]
    [InlineData("clear plastic box")]
    [InlineData("yes")]
    public void What_says_nothing_of_the_item_is_harmless(string text) => Assert.False(AnswerWords.IsIn(text));

    [Theory]
    [InlineData("pass", true)]
    [InlineData("OK", true)]
    [InlineData("bestanden", true)]
    [InlineData("ja", true)]
    [InlineData("fail", false)]
    [InlineData("no", false)]
    [InlineData("noted", false)]
    [InlineData("pass with remarks", false)]
    [InlineData("nicht bestanden", false)]
    [InlineData("non conforme", false)]
    [InlineData("unfit", false)]
    public void A_result_is_good_or_it_is_not(string text, bool good) => Assert.Equal(good, AnswerWords.IsGood(text));

    [Theory]
    [InlineData("cut through")]
    [InlineData("out-of-service since May")]
    [InlineData("OUT OF SERVICE!")]
    [InlineData("not to be used")]
    [InlineData("rusted")]
    [InlineData("kaputt")]
    [InlineData("Haarriss im Schaft")]
    [InlineData("Kernmantelbruch")]
    [InlineData("Maengel")]
    [InlineData("beschaedigt")]
    [InlineData("de\u0301faut")]
    [InlineData("cr\u00ADack")]
    [InlineData("ausge\u00AD\nsondert")]
    [InlineData("hors d'usage")]
    [InlineData("périmé")]
    [InlineData("Schrott")]
    public void What_says_something_bad_is_never_passed_over(string text) => Assert.True(AnswerWords.IsAdverse(text));

    /// <summary>No text of a file is too broken to be looked at.</summary>
    [Fact]
    public void Half_of_a_character_pair_does_no_harm()
    {
        Assert.True(AnswerWords.IsAdverse("cracked " + '\ud800'));
        Assert.False(AnswerWords.IsAdverse("Shelf " + '\udc00'));
    }
}
